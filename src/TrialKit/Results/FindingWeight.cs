namespace TrialKit.Results;

/// <summary>How much a finding should weigh with a reader.</summary>
public enum FindingWeight
{
    /// <summary>Good to know.</summary>
    Note,

    /// <summary>Read the result with this in mind.</summary>
    Caution,

    /// <summary>The result may not mean what it seems to.</summary>
    Serious,
}
