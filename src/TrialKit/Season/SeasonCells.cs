using System.Globalization;
using TrialKit.Ingest;
using TrialKit.Ingest.Messages;

namespace TrialKit.Season;

/// <summary>One row of a season table as it is read; a cell that cannot be is listed, and the row counts as faulty.</summary>
internal sealed class SeasonCells(string file, int row, IReadOnlyList<SeasonField> fields, object?[][] columns, int index, List<Problem> problems)
{
    /// <summary>Whether every cell asked for so far could be.</summary>
    public bool IsSound { get; private set; } = true;

    /// <summary>A text that has to be there.</summary>
    public string Text(string column) => OptionalText(column) ?? "";

    /// <summary>A text; null when the cell is empty.</summary>
    public string? OptionalText(string column) => (string?)Cell(column);

    /// <summary>A whole number that has to be there, no less than a limit.</summary>
    public int Whole(string column, int least) => OptionalWhole(column, least) ?? least;

    /// <summary>A whole number no less than a limit; null when the cell is empty.</summary>
    public int? OptionalWhole(string column, int least)
    {
        var value = (int?)Cell(column);
        Require(value is null || value >= least, column, value, string.Create(CultureInfo.InvariantCulture, $"a whole number of {least} or more was expected"));
        return value;
    }

    /// <summary>A finite number that has to be there.</summary>
    public double Number(string column) => OptionalNumber(column) ?? 0;

    /// <summary>A finite number; null when the cell is empty.</summary>
    public double? OptionalNumber(string column)
    {
        var value = (double?)Cell(column);
        Require(value is null || double.IsFinite(value.Value), column, value, "a finite number was expected");
        return value;
    }

    /// <summary>A finite number above zero; null when the cell is empty.</summary>
    public double? OptionalAboveZero(string column)
    {
        var value = (double?)Cell(column);
        Require(value is null or (> 0 and < double.PositiveInfinity), column, value, "a number above zero was expected");
        return value;
    }

    /// <summary>Yes or no, which has to be there.</summary>
    public bool YesNo(string column) => (bool?)Cell(column) ?? false;

    /// <summary>A day that has to be there.</summary>
    public DateOnly Date(string column) => (DateOnly?)Cell(column) ?? default;

    /// <summary>One of some words, which has to be there.</summary>
    public T Choice<T>(string column, IReadOnlyDictionary<string, T> choices)
    {
        var text = Text(column);
        var isKnown = choices.TryGetValue(text, out var choice);
        Require(isKnown || !IsSound, column, text, $"{Wording.Or([.. choices.Keys])} was expected");
        return choice!;
    }

    /// <summary>Lists what a cell holds when it is not as it must be.</summary>
    public void Require(bool holds, string column, object? found, string expected)
    {
        if (!holds)
        {
            Fault(SeasonProblems.Wrong(At(column), column, Convert.ToString(found, CultureInfo.InvariantCulture) ?? "", expected));
        }
    }

    /// <summary>Lists a problem of this row.</summary>
    public void Fault(Problem problem)
    {
        IsSound = false;
        problems.Add(problem);
    }

    /// <summary>Lists a doubt about this row, which is read all the same.</summary>
    public void Warn(Problem problem) => problems.Add(problem);

    /// <summary>The place of a column's cell in this row.</summary>
    public ProblemLocation At(string column) => new(file, Sheet: null, row, Position(column) + 1);

    private object? Cell(string column)
    {
        var c = Position(column);
        var cell = columns[c][index];
        if (cell is null && fields[c].IsRequired)
        {
            Fault(SeasonProblems.Empty(At(column), column));
        }

        return cell;
    }

    private int Position(string column)
    {
        for (var c = 0; c < fields.Count; c++)
        {
            if (fields[c].Name == column)
            {
                return c;
            }
        }

        throw new ArgumentException($"There is no column '{column}' in a season table.", nameof(column));
    }
}
