namespace TrialKit.Season;

/// <summary>What the cells of a season table's column are, in every form it is written in.</summary>
internal enum SeasonType
{
    /// <summary>Text, UTF-8.</summary>
    Text,

    /// <summary>A whole number of 32 bits.</summary>
    Whole,

    /// <summary>A number of 64 bits, finite.</summary>
    Number,

    /// <summary>True or false.</summary>
    YesNo,

    /// <summary>A day without a time.</summary>
    Date,
}
