using System.Text;
using System.Text.RegularExpressions;
using Tomlyn.Parsing;
using Tomlyn.Syntax;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest.Toml;

/// <summary>Reads TOML into values that know where they stand.</summary>
internal static partial class TomlReader
{
    /// <summary>Deeper brackets than this are refused before parsing, which would exhaust the stack.</summary>
    private const int Deepest = 64;

    /// <summary>More lines with faults than this are taken for one slip that ran on.</summary>
    private const int MostSlips = 3;

    /// <summary>Reads a file.</summary>
    /// <param name="text">The file.</param>
    /// <param name="problems">Takes every fault of syntax.</param>
    /// <returns>The values, or null with errors added.</returns>
    public static TomlMap? Read(Utf8Text text, ProblemList problems)
    {
        if (TooDeep(text) is { } tooDeep)
        {
            problems.Add(TomlProblems.TooDeep(tooDeep, Deepest));
            return null;
        }

        if (Parse(text, problems) is not { } document)
        {
            return null;
        }

        if (document.HasErrors)
        {
            // One slip makes the parser stumble on along the line, and an open quote through the whole file: the first stumble is the slip.
            var stumbles = document.Diagnostics.DistinctBy(diagnostic => diagnostic.Span.Start.Line).ToArray();
            foreach (var diagnostic in stumbles.Take(stumbles.Length > MostSlips ? 1 : MostSlips))
            {
                problems.Add(TomlProblems.Syntax(Place(text, diagnostic.Span), diagnostic.Message));
            }

            return null;
        }

        var root = new TomlMap(ProblemLocation.StartOf(text.File));
        var builder = new Builder(text);
        builder.Add(root, document.KeyValues);
        foreach (var table in document.Tables)
        {
            builder.Add(builder.Open(root, table), table.Items);
        }

        return root;
    }

    /// <summary>The syntax of the file; null with an error added where an escape stands for no character, at which the package throws.</summary>
    private static DocumentSyntax? Parse(Utf8Text text, ProblemList problems)
    {
        try
        {
            return SyntaxParser.Parse(text.Content, text.File, validate: true);
        }
        catch (ArgumentException)
        {
            var escape = NoCharacter().Match(text.Content);
            problems.Add(TomlProblems.Syntax(text.Locate(text.MarkLength + Encoding.UTF8.GetByteCount(text.Content.AsSpan(0, escape.Index))), "an escape stands for no character"));
            return null;
        }
    }

    [GeneratedRegex(@"\\(u|U0000)[dD][89a-fA-F][0-9a-fA-F]{2}|\\U(?!000[0-9a-fA-F]|0010)[0-9a-fA-F]{8}", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex NoCharacter();

    private static ProblemLocation? TooDeep(Utf8Text text)
    {
        var depth = 0;
        for (var i = text.MarkLength; i < text.Bytes.Length; i++)
        {
            depth = text.Bytes[i] switch
            {
                (byte)'[' or (byte)'{' => depth + 1,
                (byte)']' or (byte)'}' => Math.Max(0, depth - 1),
                _ => depth,
            };
            if (depth > Deepest)
            {
                return text.Locate(i);
            }
        }

        return null;
    }

    private static ProblemLocation Place(Utf8Text text, SourceSpan span) =>
        new(text.File, null, Math.Max(0, span.Start.Line) + 1, Math.Max(0, span.Start.Column) + 1);

    /// <summary>Turns the syntax of one file into values; duplicate keys and tables were refused by the parser.</summary>
    private sealed class Builder(Utf8Text text)
    {
        public void Add(TomlMap map, SyntaxList<KeyValueSyntax> pairs)
        {
            foreach (var pair in pairs)
            {
                Add(map, pair);
            }
        }

        /// <summary>The map that a table's heading opens: a new one at the end of its list for a doubled bracket.</summary>
        public TomlMap Open(TomlMap root, TableSyntaxBase table)
        {
            var names = Names(table.Name!);
            var map = Descend(root, names.SkipLast(1));
            var (name, at) = names[^1];
            if (table is TableArraySyntax)
            {
                if (!map.Entries.TryGetValue(name, out var entry) || entry.Value is not TomlList list)
                {
                    list = new TomlList(at, []);
                    map.Entries[name] = (at, list);
                }

                var item = new TomlMap(at);
                list.Items.Add(item);
                return item;
            }

            return Descend(map, [(name, at)]);
        }

        private static TomlMap Descend(TomlMap map, IEnumerable<(string Name, ProblemLocation At)> names)
        {
            foreach (var (name, at) in names)
            {
                if (!map.Entries.TryGetValue(name, out var entry))
                {
                    entry = (at, new TomlMap(at));
                    map.Entries[name] = entry;
                }

                // Within a list of tables, a heading goes on with the last one.
                map = entry.Value switch
                {
                    TomlMap inner => inner,
                    TomlList { Items: [.., TomlMap last] } => last,
                    _ => new TomlMap(at),
                };
            }

            return map;
        }

        private void Add(TomlMap map, KeyValueSyntax pair)
        {
            var names = Names(pair.Key!);
            var (name, at) = names[^1];
            Descend(map, names.SkipLast(1)).Entries[name] = (at, Value(pair.Value!));
        }

        private List<(string Name, ProblemLocation At)> Names(KeySyntax key) =>
            [(Name(key.Key!), Place(text, key.Key!.Span)), .. key.DotKeys.Select(dotted => (Name(dotted.Key!), Place(text, dotted.Key!.Span)))];

        private static string Name(BareKeyOrStringValueSyntax key) => key switch
        {
            BareKeySyntax bare => bare.Key!.Text!,
            StringValueSyntax quoted => quoted.Value!,
            _ => key.ToString()!,
        };

        private TomlNode Value(ValueSyntax value)
        {
            var at = Place(text, value.Span);
            switch (value)
            {
                case StringValueSyntax quoted:
                    return new TomlText(at, quoted.Value!);
                case IntegerValueSyntax whole:
                    return new TomlNumber(at, whole.Value, whole.Token!.Text!);
                case FloatValueSyntax number:
                    return new TomlNumber(at, number.Value, number.Token!.Text!);
                case BooleanValueSyntax flag:
                    return new TomlFlag(at, flag.Value);
                case DateTimeValueSyntax date:
                    return new TomlDate(at, date.Token!.Text!);
                case ArraySyntax list:
                    return new TomlList(at, [.. list.Items.Select(item => Value(item.Value!))]);
                case InlineTableSyntax table:
                    var map = new TomlMap(at);
                    foreach (var item in table.Items)
                    {
                        Add(map, item.KeyValue!);
                    }

                    return map;
                default:
                    throw new InvalidOperationException($"TOML value of kind {value.Kind} is not known; the kinds of TOML 1.1 were expected.");
            }
        }
    }
}
