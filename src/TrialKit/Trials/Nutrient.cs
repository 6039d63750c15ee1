namespace TrialKit.Trials;

/// <summary>What an analysis states, in the form the trade states it.</summary>
public enum Nutrient
{
    /// <summary>Nitrogen, as N.</summary>
    N,

    /// <summary>Available phosphate, as P2O5.</summary>
    P2O5,

    /// <summary>Soluble potash, as K2O.</summary>
    K2O,

    /// <summary>Sulfur, as S.</summary>
    S,

    /// <summary>Calcium.</summary>
    Ca,

    /// <summary>Magnesium.</summary>
    Mg,

    /// <summary>Zinc.</summary>
    Zn,

    /// <summary>Boron.</summary>
    B,

    /// <summary>Manganese.</summary>
    Mn,

    /// <summary>Iron.</summary>
    Fe,

    /// <summary>Copper.</summary>
    Cu,

    /// <summary>Molybdenum.</summary>
    Mo,

    /// <summary>Chloride, as Cl.</summary>
    Cl,
}
