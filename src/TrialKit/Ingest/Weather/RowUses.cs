namespace TrialKit.Ingest.Weather;

/// <summary>Counts what became of the rows of a station's file.</summary>
internal sealed class RowUses
{
    /// <summary>Rows in use.</summary>
    public int Used { get; private set; }

    /// <summary>Rows left out; each is listed by a warning.</summary>
    public int LeftOut { get; private set; }

    /// <summary>Rows that the trial has no use for.</summary>
    public int PassedOver { get; private set; }

    /// <summary>Counts a row.</summary>
    public void Add(RowUse use)
    {
        Used += use == RowUse.Used ? 1 : 0;
        LeftOut += use == RowUse.LeftOut ? 1 : 0;
        PassedOver += use == RowUse.PassedOver ? 1 : 0;
    }
}
