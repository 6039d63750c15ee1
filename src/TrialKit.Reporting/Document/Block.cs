namespace TrialKit.Reporting.Document;

/// <summary>One piece of a report: a heading, a paragraph, a table, a figure and so on.</summary>
public abstract record Block;
