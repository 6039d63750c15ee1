namespace TrialKit.Ingest.Toml;

/// <summary>An amount of money per unit, as <c>trial.toml</c> writes one: <c>4.50 $/bu</c>.</summary>
/// <param name="Amount">The amount.</param>
/// <param name="Currency">The currency as written.</param>
/// <param name="Per">The unit it is for, as printed.</param>
/// <param name="At">Where it stands.</param>
/// <param name="Written">The text as written.</param>
internal sealed record MoneyText(double Amount, string Currency, string Per, ProblemLocation At, string Written);
