namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

internal static class EmergenceCurveDerivation
{
    private const string Counts = "Plants up, of forty seeds";

    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        var days = sheet.Column(Counts, 0);
        var first = sheet.Column(Counts, 1);
        var answers = Row(days, first, sheet.IsSecond ? "none-" : "", hand).ToList();
        answers.Add(Derived.Of("wrong-half", Day(days, first, 20, hand)));
        if (sheet.IsSecond)
        {
            var second = sheet.Column(Counts, 2);
            answers.AddRange(Row(days, second, "starter-", hand));
            answers.Add(Derived.Of("sooner", Half(days, first, hand) - Half(days, second, hand)));
            var weighted = 0m;
            for (var i = 0; i < days.Length; i++)
            {
                var fresh = first[i] - (i == 0 ? 0 : first[i - 1]);
                answers.Add(Derived.Of($"fresh{days[i]:0}", fresh));
                weighted += fresh * days[i];
            }

            answers.Add(Derived.Of("weighted", weighted));
            answers.Add(Derived.Of("mean-time", hand.Round(weighted / first[^1], 2)));
        }

        return answers;
    }

    private static IEnumerable<Derived> Row(decimal[] days, decimal[] up, string prefix, Hand hand)
    {
        var final = up[^1];
        var (tenth, most) = (Day(days, up, 0.1m * final, hand), Day(days, up, 0.9m * final, hand));
        yield return Derived.Of(prefix + "final", hand.Round(100 * final / 40, 1));
        yield return Derived.Of(prefix + "half", final / 2);
        yield return Derived.Of(prefix + "tenth", 0.1m * final);
        yield return Derived.Of(prefix + "most", 0.9m * final);
        yield return Derived.Of(prefix + "t50", Half(days, up, hand));
        yield return Derived.Of(prefix + "t10", tenth);
        yield return Derived.Of(prefix + "t90", most);
        yield return Derived.Of(prefix + "spread", most - tenth);
    }

    private static decimal Half(decimal[] days, decimal[] up, Hand hand) => Day(days, up, up[^1] / 2, hand);

    private static decimal Day(decimal[] days, decimal[] up, decimal target, Hand hand)
    {
        var before = up.ToList().FindLastIndex(count => count < target);
        return hand.Round(days[before] + ((days[before + 1] - days[before]) * (target - up[before]) / (up[before + 1] - up[before])), 2);
    }
}
