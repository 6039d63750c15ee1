using System.Collections.Immutable;
using TrialKit.Reporting.Sheets.Teaching.Topics;
using TrialKit.Trials;

namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>The topics, in the order a class takes them.</summary>
public static class ExerciseTopics
{
    /// <summary>Every topic.</summary>
    public static ImmutableArray<ExerciseTopic> All { get; } =
    [
        StandCountsByHand.Topic,
        EmergenceCurveReading.Topic,
        DegreeDaysByHand.Topic,
        PairedTByHand.Topic,
        SpotsAreNotReplicates.Topic,
        CoinsOnCards.Topic,
        BlockAnovaByHand.Topic,
        WhatPSays.Topic,
        HowManyStrips.Topic,
        UnevenEmergence.Topic,
        StarterNearSeed.Topic,
        BreakEvenAndChance.Topic,
        KeepOrReplantByTable.Topic,
    ];

    /// <summary>The topic of a name.</summary>
    /// <param name="id">Its name, without regard to case and outer spaces.</param>
    /// <returns>Null when there is none.</returns>
    public static ExerciseTopic? Find(string id) => All.FirstOrDefault(topic => Identifier.Same(topic.Id, id));
}
