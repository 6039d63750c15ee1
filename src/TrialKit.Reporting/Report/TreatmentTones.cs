using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>The tone of each treatment, the same in every figure of a report: the control 0, the others 1 and up in the trial's order.</summary>
internal sealed class TreatmentTones
{
    private readonly Dictionary<string, int> tones = new(Identifier.Comparer);

    private TreatmentTones()
    {
    }

    /// <summary>The tones of a trial's treatments.</summary>
    public static TreatmentTones Of(StripTrial trial)
    {
        var result = new TreatmentTones();
        var next = 0;
        foreach (var treatment in Ordered(trial))
        {
            var isControl = trial.Design.Control is { } control && Identifier.Same(control.Name, treatment.Name);
            result.tones.Add(treatment.Name, isControl ? 0 : ++next);
        }

        return result;
    }

    /// <summary>The treatments as figures list them: the control first.</summary>
    public static IEnumerable<Treatment> Ordered(StripTrial trial) =>
        trial.Treatments.OrderBy(treatment => trial.Design.Control is { } control && Identifier.Same(control.Name, treatment.Name) ? 0 : 1);

    /// <summary>A treatment's tone.</summary>
    public int this[Treatment treatment] => tones[treatment.Name];
}
