using Spectre.Console;

namespace TrialKit.Cli.Output;

/// <summary>A plain table: a heading, aligned columns, no boxes.</summary>
internal static class ConsoleTable
{
    public static void Print(Terminal terminal, string heading, IReadOnlyList<ConsoleColumn> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table { Border = TableBorder.None, ShowRowSeparators = false };
        foreach (var column in columns)
        {
            var head = new TableColumn(new Text(column.Head, new Style(decoration: Decoration.Dim))) { Alignment = column.IsNumber ? Justify.Right : Justify.Left };
            table.AddColumn(head.PadLeft(0).PadRight(2));
        }

        foreach (var row in rows)
        {
            table.AddRow(row.Select(cell => new Text(cell)));
        }

        terminal.WriteHeading(heading);
        terminal.Console.Write(table);
        terminal.Console.WriteLine();
    }
}
