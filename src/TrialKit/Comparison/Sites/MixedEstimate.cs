using TrialKit.Results;

namespace TrialKit.Comparison.Sites;

/// <summary>The difference from one mixed model of all strips of all sites: treatment fixed; site, treatment within site and block within site random.</summary>
/// <param name="Estimate">The difference with its error and Satterthwaite degrees of freedom; null when the fit gives none.</param>
/// <param name="Strips">Strips behind it.</param>
/// <param name="SiteVariance">Between sites; null where sites could not be told from blocks.</param>
/// <param name="SiteTreatmentVariance">Of the treatments' differences between sites; null where it could not be told from error.</param>
/// <param name="BlockVariance">Between blocks of a site; null where blocks could not be told from sites or error.</param>
/// <param name="ResidualVariance">Of strips within a block.</param>
/// <param name="IsSingular">Whether a variance was estimated as 0.</param>
public sealed record MixedEstimate(
    TEstimate? Estimate,
    int Strips,
    double? SiteVariance,
    double? SiteTreatmentVariance,
    double? BlockVariance,
    double ResidualVariance,
    bool IsSingular);
