namespace TrialKit.Numerics.HeatCurves;

/// <summary>The curve the temperature follows between a day's minimum and maximum.</summary>
internal enum DayShape
{
    /// <summary>A sine (Baskerville and Emin 1969, Ecology 50:514-517).</summary>
    Sine,

    /// <summary>A triangle (Sevacherian, Stern and Mueller 1977, J. Econ. Entomol. 70:399-402).</summary>
    Triangle,
}

/// <summary>What the heat above the upper threshold does (Roltsch et al. 1999, Int. J. Biometeorol. 42:169-176).</summary>
internal enum CutOff
{
    /// <summary>It counts in full.</summary>
    None,

    /// <summary>It counts no more than the threshold itself.</summary>
    Horizontal,

    /// <summary>It takes away as much as it is above.</summary>
    Intermediate,

    /// <summary>Development stops while it lasts.</summary>
    Vertical,
}
