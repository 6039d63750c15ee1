namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

/// <summary>The percents of whole stands are read from the published table as the sheet prints it.</summary>
internal static class UnevenEmergenceDerivation
{
    private const string Tape = "Days from planting to emergence, plant by plant along the tape";

    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        var usual = sheet.Column(Tape, 1);
        var loss = Loss(usual, hand);
        var yield = sheet.Find("About ([0-9]+) bushels per acre are usual")[0];
        decimal[] costs =
        [
            hand.Round(yield * loss / 100, 1),
            hand.Round(yield * sheet.Find("two leaves late: yield −([0-9.]+) %")[0] / 100, 1),
            hand.Round(yield * sheet.Find("10 to 12 days late: 25, 50, 75 % of plants, all +yield −([0-9.]+),")[0] / 100, 1),
        ];
        yield return Derived.Of("single", costs[0]);
        yield return Derived.Of("sixth", costs[1]);
        yield return Derived.Of("quarter", costs[2]);
        yield return Derived.Of("smallest", costs.Min());
        yield return Derived.Of("largest", costs.Max());
        yield return Derived.Of("wrong-bushels", hand.Round(yield * Late(usual, hand) / 100, 1));
        foreach (var derived in Strip(usual, "", hand))
        {
            yield return derived;
        }

        if (sheet.IsSecond)
        {
            var firm = sheet.Column(Tape, 2);
            var gain = loss - Loss(firm, hand);
            yield return Derived.Of("gain", gain);
            yield return Derived.Of("gain-bushels", hand.Round(yield * gain / 100, 1));
            yield return Derived.Of("neighbours", Latest(usual, hand));
            foreach (var derived in Strip(firm, "firm-", hand))
            {
                yield return derived;
            }
        }
    }

    private static IEnumerable<Derived> Strip(decimal[] days, string prefix, Hand hand)
    {
        var lags = Lags(days);
        for (var i = 0; i < lags.Length; i++)
        {
            yield return Derived.Of($"{prefix}lag{i + 1}", lags[i]);
        }

        yield return Derived.Of($"{prefix}sum", lags.Sum());
        yield return Derived.Of($"{prefix}mean", hand.Round(lags.Average(), 1));
        yield return Derived.Of($"{prefix}within", hand.Round(100m * lags.Count(lag => lag <= 2) / lags.Length, 1));
        yield return Derived.Of($"{prefix}late", Late(days, hand));
        yield return Derived.Of($"{prefix}points", Points(days));
        yield return Derived.Of($"{prefix}loss", Loss(days, hand));
    }

    private static decimal[] Lags(decimal[] days) => [.. days.Select(day => day - days.Min())];

    private static decimal Late(decimal[] days, Hand hand) => hand.Round(100m * Lags(days).Count(lag => lag > 3) / days.Length, 1);

    private static decimal Points(decimal[] days) => Lags(days).Where(lag => lag > 3).Sum(lag => 5 * (lag - 3));

    private static decimal Loss(decimal[] days, Hand hand) => hand.Round(Points(days) / days.Length, 1);

    private static decimal Latest(decimal[] days, Hand hand)
    {
        var latest = 1;
        for (var plant = 2; plant < days.Length - 1; plant++)
        {
            latest = days[plant] > days[latest] ? plant : latest;
        }

        return days[latest] - hand.Round((days[latest - 1] + days[latest + 1]) / 2, 1);
    }
}
