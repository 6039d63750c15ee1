using System.Globalization;
using System.Text;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Html;

/// <summary>Writes markup in which every text is escaped: a name can never become a tag.</summary>
internal sealed class HtmlText
{
    private readonly StringBuilder html = new();

    /// <summary>A text as it may stand between tags and in quoted attributes.</summary>
    public static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '"' => escaped.Append("&quot;"),
                '\'' => escaped.Append("&#39;"),
                _ => Rune.IsControl(rune) ? escaped.Append(' ') : escaped.Append(rune.ToString()),
            };
        }

        return escaped.ToString();
    }

    /// <summary>A number as an attribute holds it.</summary>
    public static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Markup as it stands.</summary>
    public HtmlText Raw(string markup)
    {
        html.Append(markup);
        return this;
    }

    /// <summary>An element of one line.</summary>
    public HtmlText Element(string tag, string text, string attributes = "") => Element(tag, RichText.Of(text), attributes);

    /// <summary>An element of one line, with parts that stand out.</summary>
    public HtmlText Element(string tag, RichText text, string attributes = "")
    {
        Raw($"<{tag}{(attributes.Length > 0 ? " " : "")}{attributes}>");
        Text(text);
        return Raw($"</{tag}>\n");
    }

    /// <summary>Text with parts that stand out.</summary>
    public HtmlText Text(RichText text)
    {
        foreach (var run in text.Runs)
        {
            var (open, close) = Tags(run.Emphasis);
            Raw(open).Raw(Escape(run.Text)).Raw(close);
        }

        return this;
    }

    /// <inheritdoc/>
    public override string ToString() => html.ToString();

    private static (string Open, string Close) Tags(Emphasis emphasis)
    {
        var (open, close) = ("", "");
        foreach (var (flag, tag) in new[] { (Emphasis.Strong, "strong"), (Emphasis.Italic, "em"), (Emphasis.Quiet, "small") })
        {
            if (emphasis.HasFlag(flag))
            {
                open += $"<{tag}>";
                close = $"</{tag}>{close}";
            }
        }

        return (open, close);
    }
}
