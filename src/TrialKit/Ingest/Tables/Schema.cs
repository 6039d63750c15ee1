using TrialKit.Ingest.Cells;

namespace TrialKit.Ingest.Tables;

/// <summary>The columns of every table.</summary>
internal static class Schema
{
    public static readonly Column Strip = new("strip", Required: true);
    public static readonly Column Spot = new("spot");
    public static readonly Column RequiredSpot = new("spot", Required: true);
    public static readonly Column Length = new("length", UnitKinds.Length);
    public static readonly Column RequiredLength = new("length", UnitKinds.Length, Required: true);
    public static readonly Column Width = new("width", UnitKinds.Length);
    public static readonly Column Note = new("note");
    public static readonly Column Rows = new("rows");

    public static readonly Column Block = new("block", Required: true);
    public static readonly Column Treatment = new("treatment", Required: true);
    public static readonly Column Order = new("order");
    public static readonly Column Planted = new("planted");
    public static readonly Column LeftOut = new("left_out");
    public static readonly IReadOnlyList<Column> Strips = [Strip, Block, Treatment, Order, Length, Width, Rows, Planted, LeftOut, Note];

    public static readonly Column FromStart = new("from_start", UnitKinds.Length, Required: true);
    public static readonly Column PlanterRow = new("planter_row");
    public static readonly Column Pass = new("pass");
    public static readonly IReadOnlyList<Column> Spots = [Strip, RequiredSpot, FromStart, Pass, PlanterRow, Length];

    public static readonly Column Date = new("date");
    public static readonly Column RequiredPlants = new("plants", Required: true);
    public static readonly IReadOnlyList<Column> StandCounts = [Strip, Spot, Date, RequiredLength, RequiredPlants, Rows, PlanterRow, Note];

    public static readonly Column RequiredDate = new("date", Required: true);
    public static readonly Column Plants = new("plants");
    public static readonly Column NewPlants = new("new_plants");
    public static readonly Column Seeds = new("seeds");
    public static readonly IReadOnlyList<Column> Emergence = [Strip, RequiredSpot, RequiredDate, Plants, NewPlants, Length, Seeds];

    public static readonly Column Plant = new("plant", Required: true);
    public static readonly Column Position = new("position", UnitKinds.Length);
    public static readonly Column FirstSeen = new("first_seen");
    public static readonly Column Collars = new("collars");
    public static readonly Column Depth = new("depth", UnitKinds.Length);
    public static readonly Column Mesocotyl = new("mesocotyl", UnitKinds.Length);
    public static readonly IReadOnlyList<Column> SinglePlants = [Strip, RequiredSpot, Plant, Position, FirstSeen, Collars, Depth, Mesocotyl, Note];

    public static readonly Column Weight = new("weight", UnitKinds.Weight, Required: true);
    public static readonly Column Moisture = new("moisture", UnitKinds.Share, Required: true);
    public static readonly Column TestWeight = new("test_weight", UnitKinds.TestWeight);
    public static readonly IReadOnlyList<Column> Harvest = [Strip, Weight, Moisture, Length, Width, TestWeight, Note];

    public static readonly Column Measure = new("measure", Required: true);
    public static readonly Column Value = new("value", Required: true);
    public static readonly Column Unit = new("unit");
    public static readonly IReadOnlyList<Column> Measures = [Strip, Spot, Measure, Value, Unit];

    public static readonly Column Time = new("date", Required: true) { Aliases = ["datetime", "date_time", "time"] };
    public static readonly Column Maximum = new("tmax", UnitKinds.Temperature) { Aliases = ["maximum", "max", "temp_max", "maximum_temperature", "max_temperature", "temperature_maximum", "temperature_max"] };
    public static readonly Column Minimum = new("tmin", UnitKinds.Temperature) { Aliases = ["minimum", "min", "temp_min", "minimum_temperature", "min_temperature", "temperature_minimum", "temperature_min"] };
    public static readonly Column Temperature = new("temperature", UnitKinds.Temperature) { Aliases = ["temp"] };
    public static readonly Column MaximumFlags = new("tmax_attributes") { IsListed = false };
    public static readonly Column MinimumFlags = new("tmin_attributes") { IsListed = false };
    public static readonly Column StationName = new("station") { IsListed = false };
    public static readonly IReadOnlyList<Column> Weather =
    [
        Time, Maximum, Minimum, Temperature, MaximumFlags, MinimumFlags,
        StationName, .. Station("name", "latitude", "longitude", "elevation", "prcp", "prcp_attributes", "snow", "snow_attributes", "snwd", "snwd_attributes", "tavg", "tavg_attributes", "tobs", "tobs_attributes"),
    ];

    public static readonly Column Year = new("year", Required: true);
    public static readonly Column Month = new("mo");
    public static readonly Column Day = new("dy");
    public static readonly Column DayOfYear = new("doy") { Aliases = ["yday"] };
    public static readonly Column GridMaximum = new("tmax", UnitKinds.Temperature, Required: true) { Aliases = ["t2m_max"] };
    public static readonly Column GridMinimum = new("tmin", UnitKinds.Temperature, Required: true) { Aliases = ["t2m_min"] };
    public static readonly IReadOnlyList<Column> GridWeather = [Year, Month, Day, DayOfYear, GridMaximum, GridMinimum];

    /// <summary>The tables in the order in which they are read and their problems listed.</summary>
    public static readonly IReadOnlyList<(string Table, IReadOnlyList<Column> Columns)> Tables =
    [
        ("strips", Strips), ("spots", Spots), ("stand-counts", StandCounts), ("emergence", Emergence), ("plants", SinglePlants),
        ("harvest", Harvest), ("measures", Measures), ("weather", Weather), ("soil-temperature", Weather),
    ];

    /// <summary>The tables' names in that order.</summary>
    public static readonly IReadOnlyList<string> TableNames = [.. Tables.Select(table => table.Table)];

    private static IEnumerable<Column> Station(params IEnumerable<string> names) => names.Select(name => new Column(name) { IsListed = false });
}
