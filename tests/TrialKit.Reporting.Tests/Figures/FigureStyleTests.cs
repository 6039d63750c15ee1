using SkiaSharp;
using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Tests.Figures;

/// <summary>The tones can be told apart in grey and with the common deficiencies of colour vision.</summary>
/// <remarks>
/// Lightness and distance in CIE 1976 L*a*b* under D65. Deficiencies after Machado, Oliveira and Fernandes (2009),
/// "A physiologically-based model for simulation of color vision deficiency", severity 1.0; matrices from memory,
/// their rows checked to sum to one.
/// </remarks>
public class FigureStyleTests
{
    private static readonly Dictionary<string, double[,]> Visions = new(StringComparer.Ordinal)
    {
        ["common"] = new double[,] { { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } },
        ["protan"] = new double[,] { { 0.152286, 1.052583, -0.204868 }, { 0.114503, 0.786281, 0.099216 }, { -0.003882, -0.048116, 1.051998 } },
        ["deutan"] = new double[,] { { 0.367322, 0.860646, -0.227968 }, { 0.280085, 0.672501, 0.047413 }, { -0.011820, 0.042940, 0.968881 } },
        ["tritan"] = new double[,] { { 1.255528, -0.076749, -0.178779 }, { -0.078411, 0.930809, 0.147602 }, { 0.004733, 0.691367, 0.303900 } },
    };

    private static IReadOnlyList<SKColor> Tones => [.. Enumerable.Range(0, 7).Select(FigureStyle.Tone)];

    [Fact]
    public void Tones_InGrey_DifferInLightness()
    {
        var lightness = Tones.Select(tone => Lab(Linear(tone))[0]).Order().ToList();

        Assert.All(lightness.Zip(lightness.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 6, FormattableString.Invariant($"{pair}")));
    }

    [Fact]
    public void Control_AmongTheTones_IsTheLightestAndNeutral()
    {
        var control = Lab(Linear(FigureStyle.Control));

        Assert.All(FigureStyle.Treatments, tone => Assert.True(Lab(Linear(tone))[0] < control[0]));
        Assert.True(Math.Sqrt((control[1] * control[1]) + (control[2] * control[2])) < 6);
    }

    [Theory]
    [InlineData("common")]
    [InlineData("protan")]
    [InlineData("deutan")]
    [InlineData("tritan")]
    public void Tones_SeenByAnyVision_AreApart(string vision)
    {
        var seen = Tones.Select(tone => Lab(Seen(Linear(tone), Visions[vision]))).ToList();
        for (var i = 0; i < seen.Count; i++)
        {
            for (var j = i + 1; j < seen.Count; j++)
            {
                var distance = Math.Sqrt(seen[i].Zip(seen[j], (a, b) => (a - b) * (a - b)).Sum());
                Assert.True(distance >= 20, FormattableString.Invariant($"{vision}: tones {i} and {j} are {distance:F1} apart"));
            }
        }
    }

    [Theory]
    [InlineData("protan")]
    [InlineData("deutan")]
    [InlineData("tritan")]
    public void Visions_Neutral_StaysNeutral(string vision)
    {
        var matrix = Visions[vision];

        Assert.All(Enumerable.Range(0, 3), row => Assert.Equal(1, matrix[row, 0] + matrix[row, 1] + matrix[row, 2], 2e-6));
    }

    [Fact]
    public void Lines_OnWhite_HaveThreeToOneAndTextHasFourAndAHalf()
    {
        Assert.All(Tones, tone => Assert.True(OnWhite(tone) >= 3, $"{tone} has {OnWhite(tone)}"));
        Assert.All([FigureStyle.Ink, FigureStyle.Quiet, FigureStyle.ControlText], tone => Assert.True(OnWhite(tone) >= 4.5, $"{tone} has {OnWhite(tone)}"));
    }

    [Fact]
    public void Tone_BelowZero_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => FigureStyle.Tone(-1));

    [Fact]
    public void ToneAndStroke_OfUpToEighteenTreatments_AreNeverBothTheSame()
    {
        var looks = Enumerable.Range(0, 19).Select(tone => (FigureStyle.Tone(tone), FigureStyle.Stroke(tone))).ToArray();

        Assert.Equal(looks.Length, looks.Distinct().Count());
        Assert.All(looks.Take(7), look => Assert.Equal(LineStroke.Whole, look.Item2));
    }

    private static double[] Linear(SKColor color) => [.. new[] { color.Red, color.Green, color.Blue }.Select(value =>
        value / 255.0 is var share && share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4))];

    private static double[] Seen(double[] rgb, double[,] matrix) => [.. Enumerable.Range(0, 3).Select(row =>
        Math.Clamp((matrix[row, 0] * rgb[0]) + (matrix[row, 1] * rgb[1]) + (matrix[row, 2] * rgb[2]), 0, 1))];

    private static double Luminance(double[] rgb) => (0.2126 * rgb[0]) + (0.7152 * rgb[1]) + (0.0722 * rgb[2]);

    private static double OnWhite(SKColor color) => 1.05 / (Luminance(Linear(color)) + 0.05);

    private static double[] Lab(double[] rgb)
    {
        static double F(double t) => t > 216.0 / 24389 ? Math.Cbrt(t) : ((24389.0 / 27 * t) + 16) / 116;
        var x = F(((0.4124 * rgb[0]) + (0.3576 * rgb[1]) + (0.1805 * rgb[2])) / 0.95047);
        var y = F(Luminance(rgb));
        var z = F(((0.0193 * rgb[0]) + (0.1192 * rgb[1]) + (0.9505 * rgb[2])) / 1.08883);
        return [(116 * y) - 16, 500 * (x - y), 200 * (y - z)];
    }
}
