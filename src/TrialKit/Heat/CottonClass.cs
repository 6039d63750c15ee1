namespace TrialKit.Heat;

/// <summary>How good five days after planting are for cotton.</summary>
public enum CottonClass
{
    /// <summary>A sum up to 10.</summary>
    VeryPoor,

    /// <summary>A sum of 11 to 15.</summary>
    Marginal,

    /// <summary>A sum of 16 to 25.</summary>
    Adequate,

    /// <summary>A sum of 26 to 35.</summary>
    Good,

    /// <summary>A sum of 36 to 49.</summary>
    VeryGood,

    /// <summary>A sum of 50.</summary>
    Excellent,
}
