namespace TrialKit.Fuzz.Mutation;

/// <summary>What a case damages.</summary>
internal enum MutationKind
{
    /// <summary>Bytes, whatever they mean.</summary>
    Bytes,

    /// <summary>Numbers, names, dates, keys and marks, each as a whole.</summary>
    Tokens,

    /// <summary>Lines, columns, sections, elements and parts: their order, number and place.</summary>
    Structure,
}
