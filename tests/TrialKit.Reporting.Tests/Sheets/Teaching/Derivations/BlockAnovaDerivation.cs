namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

/// <summary>On paper by totals, as the sheet asks; not rounded by deviations from means, another way to the same sums of squares.</summary>
internal static class BlockAnovaDerivation
{
    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        var rows = sheet.Table("Plants in a thousandth of an acre, by block").Select(row => row.Skip(1).Select(SheetText.Number).ToArray()).ToArray();
        var (b, t) = (rows.Length, rows[0].Length);
        var byBlock = rows.Select(row => row.Sum()).ToArray();
        var byTreatment = Enumerable.Range(0, t).Select(column => rows.Sum(row => row[column])).ToArray();
        var total = byBlock.Sum();
        var squares = rows.Sum(row => row.Sum(count => count * count));
        var correction = hand.Round(total * total / (b * t), 2);
        var ssTotal = squares - correction;
        var ssBlocks = hand.Round(byBlock.Sum(sum => sum * sum) / t, 2) - correction;
        var ssTreatments = hand.Round(byTreatment.Sum(sum => sum * sum) / b, 2) - correction;
        var ssError = hand == Hand.Full ? Residual(rows, byBlock, byTreatment, total) : ssTotal - ssBlocks - ssTreatments;
        var df = (b - 1) * (t - 1);
        var msTreatments = hand.Round(ssTreatments / (t - 1), 2);
        var msError = hand.Round(ssError / df, 2);
        var f = hand.Round(msTreatments / msError, 2);
        var critical = hand.F(sheet, t - 1, df, 0.10m);
        for (var i = 0; i < b; i++)
        {
            yield return Derived.Of($"block{i + 1}", byBlock[i]);
        }

        for (var i = 0; i < t; i++)
        {
            yield return Derived.Of($"treatment{i + 1}", byTreatment[i]);
        }

        yield return Derived.Of("total", total);
        yield return Derived.Of("squares", squares);
        yield return Derived.Of("correction", correction);
        yield return Derived.Of("ss-total", ssTotal);
        yield return Derived.Of("ss-blocks", ssBlocks);
        yield return Derived.Of("ss-treatments", ssTreatments);
        yield return Derived.Of("ss-error", ssError);
        yield return Derived.Of("df-blocks", b - 1);
        yield return Derived.Of("df-treatments", t - 1);
        yield return Derived.Of("df-error", df);
        yield return Derived.Of("ms-blocks", hand.Round(ssBlocks / (b - 1), 2));
        yield return Derived.Of("ms-treatments", msTreatments);
        yield return Derived.Of("ms-error", msError);
        yield return Derived.Of("f", f);
        yield return Derived.Of("critical", critical);
        yield return Derived.Of("verdict", f > critical ? "shown" : "not shown");
        yield return Derived.Of("bracket", hand.BracketF(sheet, f, t - 1, df));
        var wrong = hand.Round((ssError + ssBlocks) / ((b * t) - t), 2);
        yield return Derived.Of("wrong-ss", ssError + ssBlocks);
        yield return Derived.Of("wrong-ms", wrong);
        yield return Derived.Of("wrong-f", hand.Round(msTreatments / wrong, 2));
        if (sheet.IsSecond)
        {
            var (spiked, rubber) = (hand.Round(byTreatment[1] / b, 2), hand.Round(byTreatment[0] / b, 2));
            var error = hand.Root(2 * msError / b, 2);
            var difference = hand.Round((spiked - rubber) / error, 2);
            yield return Derived.Of("mean-spiked", spiked);
            yield return Derived.Of("mean-rubber", rubber);
            yield return Derived.Of("error", error);
            yield return Derived.Of("t", difference);
            yield return Derived.Of("t-critical", hand.T(sheet, df, 0.10m));
            yield return Derived.Of("t-verdict", Math.Abs(difference) > hand.T(sheet, df, 0.10m) ? "shown" : "not shown");
        }
    }

    private static decimal Residual(decimal[][] rows, decimal[] byBlock, decimal[] byTreatment, decimal total)
    {
        var (b, t) = (rows.Length, rows[0].Length);
        return rows.Select((row, i) => row.Select((count, j) => count - (byBlock[i] / t) - (byTreatment[j] / b) + (total / (b * t))).Sum(residual => residual * residual)).Sum();
    }
}
