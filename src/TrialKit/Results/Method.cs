namespace TrialKit.Results;

/// <summary>The procedure behind a result.</summary>
/// <param name="Name">Its standard name.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Page">Its page under <c>docs/methods</c>.</param>
public sealed record Method(string Name, string Source, string Page);
