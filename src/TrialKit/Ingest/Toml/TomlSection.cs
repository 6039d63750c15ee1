using System.Text;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;

namespace TrialKit.Ingest.Toml;

/// <summary>Reads the keys of one section as what they hold, and reports those that nobody asked for.</summary>
/// <param name="map">The section.</param>
/// <param name="name">The section as messages name it, such as <c>[planting]</c>.</param>
/// <param name="problems">Takes faulty values and unknown keys.</param>
internal sealed class TomlSection(TomlMap map, string name, ProblemList problems)
{
    private readonly List<string> _known = [];

    /// <summary>Where the section begins.</summary>
    public ProblemLocation Start => map.At;

    /// <summary>The keys that were asked for, in that order.</summary>
    public IReadOnlyList<string> Known => _known;

    /// <summary>Every key of the section with its place.</summary>
    public IEnumerable<(string Key, ProblemLocation At)> Keys => map.Entries.Select(entry => (entry.Key, entry.Value.KeyAt));

    /// <summary>Where a key's value stands; the section's place when the key is absent.</summary>
    public ProblemLocation At(string key) => map.Entries.TryGetValue(key, out var entry) ? entry.Value.At : map.At;

    /// <summary>Whether the section holds the key.</summary>
    public bool Has(string key) => map.Entries.ContainsKey(key);

    /// <summary>Whether the key holds a section.</summary>
    public bool IsSection(string key) => map.Entries.TryGetValue(key, out var entry) && entry.Value is TomlMap;

    /// <summary>Text that is not blank.</summary>
    public string? Text(string key)
    {
        switch (Find(key))
        {
            case null:
                return null;
            case TomlText text when text.Value.FirstOrDefault(letter => char.IsControl(letter) && letter is not ('\t' or '\r' or '\n')) is var control && text.Value.Contains(control, StringComparison.Ordinal):
                problems.Add(TomlProblems.ControlCharacter(text.At, key, control));
                return null;
            case TomlText text when !string.IsNullOrWhiteSpace(text.Value):
                return text.Value.Trim();
            case TomlText text:
                problems.Add(TomlProblems.EmptyText(text.At, key));
                return null;
            case var other:
                return Wrong<string>(other, key, "text in double quotes");
        }
    }

    /// <summary>One of some words, without regard to case.</summary>
    public string? Choice(string key, IReadOnlyList<string> choices)
    {
        if (Text(key) is not { } text)
        {
            return null;
        }

        var choice = choices.FirstOrDefault(candidate => string.Equals(candidate, text, StringComparison.OrdinalIgnoreCase));
        if (choice is null)
        {
            problems.Add(TomlProblems.NotChoice(At(key), key, text, [.. choices.Select(candidate => $"\"{candidate}\"")]));
        }

        return choice;
    }

    /// <summary>A number within limits.</summary>
    public double? Number(string key, double least, double most, string range)
    {
        switch (Find(key))
        {
            case null:
                return null;
            case TomlNumber number when number.Value >= least && number.Value <= most:
                return number.Value;
            case TomlNumber number:
                problems.Add(TomlProblems.OutOfRange(number.At, key, number.Written, range));
                return null;
            case var other:
                Wrong<string>(other, key, $"a number without quotes ({range})");
                return null;
        }
    }

    /// <summary>A whole number within limits.</summary>
    public long? WholeNumber(string key, long least, long most)
    {
        var range = $"a whole number from {Wording.Number(least)} to {Wording.Number(most)}";
        if (Number(key, least, most, range) is not { } number)
        {
            return null;
        }

        if (number == Math.Floor(number))
        {
            return (long)number;
        }

        problems.Add(TomlProblems.OutOfRange(At(key), key, Wording.Number(number), range));
        return null;
    }

    /// <summary>A truth value.</summary>
    public bool? Flag(string key)
    {
        switch (Find(key))
        {
            case null:
                return null;
            case TomlFlag flag:
                return flag.Value;
            case var other:
                Wrong<string>(other, key, "true or false");
                return null;
        }
    }

    /// <summary>A date, bare or in quotes.</summary>
    public DateOnly? Date(string key, DateOrder order)
    {
        var (node, written) = Find(key) switch
        {
            TomlDate date => (date, date.Written),
            TomlText text => (text, text.Value.Trim()),
            { } other => (other, string.Empty),
            null => ((TomlNode?)null, string.Empty),
        };
        if (node is null)
        {
            return null;
        }

        switch (DateCell.Read(Encoding.UTF8.GetBytes(written), order, out var value))
        {
            case DateResult.Date:
                return DateOnly.FromDateTime(value);
            case DateResult.NoSuchDate:
                problems.Add(TomlProblems.OutOfRange(node.At, key, Wording.Quote(written), "a date of the calendar"));
                return null;
            default:
                Wrong<string>(node, key, $"a date written {DateCell.Form(order)}");
                return null;
        }
    }

    /// <summary>A quantity with its unit.</summary>
    public QuantityText? Quantity(string key, UnitKind kind)
    {
        switch (Find(key))
        {
            case null:
                return null;
            case TomlNumber number:
                problems.Add(TomlProblems.BareNumber(number.At, key, number.Written, kind.ExampleUnit, kind.Units));
                return null;
            case TomlText text:
                return Quantity(text, key, kind);
            case var other:
                Wrong<string>(other, key, $"a quantity with its unit, written \"{kind.Example}\"");
                return null;
        }
    }

    /// <summary>An amount of money per one of some units.</summary>
    /// <param name="key">The key.</param>
    /// <param name="per">What it may be per.</param>
    /// <param name="example">How to write one.</param>
    public MoneyText? Money(string key, IReadOnlyList<string> per, string example)
    {
        switch (Find(key))
        {
            case null:
                return null;
            case TomlNumber number:
                problems.Add(TomlProblems.BareNumber(number.At, key, number.Written, $"$/{per[0]}", [.. per.Select(unit => $"$/{unit}")]));
                return null;
            case TomlText text when QuantityText.TrySplit(text.Value, out var amount, out var rest) && rest.Split('/') is [var currency, var unit]
                    && currency.Trim().Length > 0 && per.Contains(unit.Trim(), StringComparer.OrdinalIgnoreCase):
                return new MoneyText(amount, currency.Trim(), unit.Trim().ToLowerInvariant(), text.At, text.Value);
            case TomlText text:
                problems.Add(TomlProblems.NotQuantity(text.At, key, text.Value, example));
                return null;
            case var other:
                Wrong<string>(other, key, $"a quantity with its unit, written \"{example}\"");
                return null;
        }
    }

    /// <summary>A sum of money.</summary>
    /// <param name="key">The key.</param>
    /// <param name="example">How to write one.</param>
    public MoneyText? Sum(string key, string example)
    {
        switch (Find(key))
        {
            case null:
                return null;
            case TomlNumber number:
                problems.Add(TomlProblems.BareNumber(number.At, key, number.Written, "$", ["$"]));
                return null;
            case TomlText text when QuantityText.TrySplit(text.Value, out var amount, out var currency) && currency.Length > 0 && !currency.Contains('/', StringComparison.Ordinal):
                return new MoneyText(amount, currency, string.Empty, text.At, text.Value);
            case TomlText text:
                problems.Add(TomlProblems.NotQuantity(text.At, key, text.Value, example));
                return null;
            case var other:
                Wrong<string>(other, key, $"a sum of money, written \"{example}\"");
                return null;
        }
    }

    /// <summary>The shares of a section, each a number above 0 and up to 1.</summary>
    /// <returns>The keys with their shares; null with errors added when one is no share.</returns>
    public IReadOnlyList<(string Key, ProblemLocation At, double Share)>? Shares()
    {
        var shares = new List<(string, ProblemLocation, double)>();
        foreach (var (key, at) in Keys)
        {
            if (Number(key, double.Epsilon, 1, "a share above 0 and up to 1") is { } share)
            {
                shares.Add((key, at, share));
            }
        }

        return shares.Count == map.Entries.Count && shares.Count > 0 ? shares : null;
    }

    /// <summary>A section within the section.</summary>
    public TomlSection? Section(string key, string title)
    {
        switch (Find(key))
        {
            case null:
                return null;
            case TomlMap inner:
                return new TomlSection(inner, title, problems);
            case var other:
                Wrong<string>(other, key, $"a section {title}");
                return null;
        }
    }

    /// <summary>The sections of a list, each headed by a name in double brackets.</summary>
    public IReadOnlyList<TomlSection> Sections(string key, string title)
    {
        switch (Find(key))
        {
            case null:
                return [];
            case TomlList list when list.Items.TrueForAll(item => item is TomlMap):
                return [.. list.Items.Select(item => new TomlSection((TomlMap)item, title, problems))];
            case var other:
                Wrong<string>(other, key, $"sections headed {title}");
                return [];
        }
    }

    /// <summary>Adds an error when a key that the section needs is absent.</summary>
    public void Require(string key, string example)
    {
        if (!Has(key))
        {
            problems.Add(TomlProblems.MissingKey(map.At, name, key, example));
        }
    }

    /// <summary>Adds an error for every key that was not asked for.</summary>
    public void Finish()
    {
        foreach (var (key, at) in Keys.Where(entry => !_known.Contains(entry.Key, StringComparer.Ordinal)))
        {
            problems.Add(TomlProblems.UnknownKey(at, name, key, _known));
        }
    }

    private QuantityText? Quantity(TomlText text, string key, UnitKind kind)
    {
        if (!QuantityText.TrySplit(text.Value, out var value, out var unit))
        {
            problems.Add(TomlProblems.NotQuantity(text.At, key, text.Value, kind.Example));
        }
        else if (unit.Length == 0)
        {
            problems.Add(TomlProblems.BareNumber(text.At, key, text.Value.Trim(), kind.ExampleUnit, kind.Units));
        }
        else if (kind.Find(unit) is { } known)
        {
            return new QuantityText(value, known, text.At, text.Value);
        }
        else
        {
            problems.Add(TomlProblems.UnknownUnit(text.At, key, unit, kind.Units));
        }

        return null;
    }

    private TomlNode? Find(string key)
    {
        if (!_known.Contains(key, StringComparer.Ordinal))
        {
            _known.Add(key);
        }

        return map.Entries.TryGetValue(key, out var entry) ? entry.Value : null;
    }

    private T? Wrong<T>(TomlNode found, string key, string expected)
        where T : class
    {
        var what = found switch
        {
            TomlText text => Wording.Quote(text.Value),
            TomlNumber number => $"the number {number.Written}",
            TomlFlag flag => flag.Value ? "true" : "false",
            TomlDate date => $"the date {date.Written}",
            TomlList => "a list",
            _ => "a section",
        };
        problems.Add(TomlProblems.WrongKind(found.At, key, what, expected));
        return null;
    }
}
