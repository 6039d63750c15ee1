using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>How far plants of one strip lag in leaves behind the commonest stage of their spot.</summary>
/// <param name="Strip">The strip; one that is left out of the analysis is summarised all the same.</param>
/// <param name="Spots">Spots with staged plants.</param>
/// <param name="Plants">Plants staged.</param>
/// <param name="PercentOneBehind">Percent of plants one leaf or more behind.</param>
/// <param name="PercentTwoBehind">Percent of plants two leaves or more behind.</param>
/// <param name="MeanLeavesBehind">Mean leaves behind; a plant ahead counts as 0.</param>
/// <param name="MeanHeatBehind">The same in corn heat units; null for another crop.</param>
/// <param name="MeanDaysBehind">Days that heat took after half of the plants were up; null for another crop and where T50 or temperatures are not known.</param>
public sealed record StripStage(Strip Strip, int Spots, int Plants, double PercentOneBehind, double PercentTwoBehind, double MeanLeavesBehind, HeatSum? MeanHeatBehind, double? MeanDaysBehind);
