using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>Two treatments that are compared: the sign of a difference means more with the first.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Baseline">What it is compared with, the control where there is one.</param>
public sealed record ComparedPair(Treatment Treatment, Treatment Baseline)
{
    /// <summary>Whether these two are the pair, in this order.</summary>
    internal bool IsOf(Treatment treatment, Treatment baseline) => Identifier.Same(treatment.Name, Treatment.Name) && Identifier.Same(baseline.Name, Baseline.Name);

    /// <summary>Whether a treatment is one of the two.</summary>
    internal bool Has(string treatment) => Identifier.Same(treatment, Treatment.Name) || Identifier.Same(treatment, Baseline.Name);

    /// <summary>The pair as a heading.</summary>
    public override string ToString() => $"{Treatment.Label} against {Baseline.Label}";
}
