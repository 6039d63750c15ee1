using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Html;

/// <summary>The one style sheet of HTML reports: a narrow column on any screen, plain sheets in print.</summary>
internal static class HtmlStyle
{
    /// <summary>The style sheet.</summary>
    /// <param name="fontFaces">The rules that bring the fonts.</param>
    public static string Sheet(string fontFaces) => fontFaces + $$"""
        :root{--ink:{{HtmlMark.Hex(FigureStyle.Ink)}};--quiet:{{HtmlMark.Hex(FigureStyle.Quiet)}};--line:{{HtmlMark.Hex(FigureStyle.Grid)}};--axis:{{HtmlMark.Hex(FigureStyle.Axis)}};--doubt:{{HtmlMark.Hex(FigureStyle.Treatments[1])}};--link:{{HtmlMark.Hex(FigureStyle.Treatments[0])}}}
        *{box-sizing:border-box}
        html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
        body{margin:0;background:#fff;color:var(--ink);font:1rem/1.5 "{{Fonts.BundledFonts.Family}}",system-ui,sans-serif;overflow-wrap:anywhere}
        header,main,nav,footer{max-width:46rem;margin:0 auto;padding:0 1rem}
        header{padding-top:2rem}
        h1{font-size:1.9rem;line-height:1.2;margin:.4rem 0}
        h2{font-size:1.3rem;line-height:1.3;margin:2.6rem 0 .6rem}
        h3{font-size:1.05rem;margin:1.6rem 0 .4rem}
        h1,h2,h3,strong,th,caption,figcaption{font-weight:600}
        p{margin:.7rem 0}
        .lead{font-size:1.2rem;line-height:1.4}
        .small,small,.note,footer{color:var(--quiet);font-size:.875rem}
        small{font-size:inherit}
        a{color:var(--link)}
        .skip{position:absolute;left:-99rem}
        .skip:focus{left:1rem;top:.5rem;background:#fff;padding:.5rem}
        nav ul{columns:2;padding-left:1.1rem}
        .facts{display:flex;flex-wrap:wrap;gap:.2rem 1.4rem;margin:.7rem 0;padding:0}
        .facts div{display:flex;gap:.4rem}
        .facts dt{color:var(--quiet);flex:none}
        .facts dd{margin:0;min-width:0}
        .answers{list-style:none;margin:1rem 0;padding:0}
        .answers li{display:grid;grid-template-columns:1fr 8.5rem;gap:1.4rem;align-items:start;margin:.6rem 0}
        .answers li>span{min-width:0}
        .scale{display:grid;grid-template-columns:1fr 8.5rem;gap:1.4rem;color:var(--quiet);font-size:.875rem;margin:0}
        .scale span{grid-column:2;display:flex;justify-content:space-between;gap:1rem;line-height:1.2}
        .scale span span{display:block;overflow-wrap:normal}
        .scale span :last-child{text-align:right}
        .mark{width:8.5rem;height:auto;margin-top:.3rem}
        figure{margin:1.6rem 0}
        figcaption{margin-bottom:.4rem}
        figure .draw svg{display:block;width:100%;height:auto}
        .narrow{display:none}
        .scroll{overflow-x:auto;margin:1.2rem 0}
        .scroll:focus-visible{outline:2px solid var(--link)}
        table{border-collapse:collapse;font-size:.9rem;line-height:1.35;overflow-wrap:normal}
        caption{text-align:left;padding-bottom:.4rem}
        th,td{padding:.28rem .9rem .28rem 0;text-align:left;vertical-align:top;border-bottom:1px solid var(--line)}
        thead th{vertical-align:bottom;border-bottom-color:var(--axis)}
        tbody th{font-weight:400}
        th small{display:block;font-weight:400}
        .r{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}
        .c{text-align:center}
        .strong td,.strong th{font-weight:600}
        table.form{width:100%}
        .form th,.form td{border:1px solid var(--axis);padding:.3rem .5rem;height:2.1rem;vertical-align:middle}
        .question{margin-top:1.4rem}
        .room{margin:.2rem 0 1rem 1.4rem}
        .line{height:1.9rem;border-bottom:1px solid var(--line)}
        .ask{display:inline-flex;align-items:center;gap:.5rem;margin:.5rem 1.6rem 0 0}
        .box{display:inline-block;flex:none;width:7rem;height:1.9rem;border:1px solid var(--axis)}
        .hash{overflow-wrap:anywhere}
        aside{border-left:1px solid var(--axis);padding-left:.9rem;margin:1rem 0}
        aside.doubt{border-left:3px solid var(--doubt)}
        aside.grave{border-left:6px solid var(--doubt)}
        aside p{margin:.1rem 0}
        hr{border:0;border-top:1px solid var(--axis);margin:1.6rem 0}
        footer{padding-top:1rem;padding-bottom:2rem;margin-top:3rem;border-top:1px solid var(--line)}
        @media (max-width:34rem){
        h1{font-size:1.5rem}
        .wide{display:none}
        .narrow{display:block}
        nav ul{columns:1}
        .answers li,.scale{grid-template-columns:1fr;gap:.2rem}
        .scale span{grid-column:1;width:8.5rem}
        }
        @media print{
        @page{margin:18mm}
        body{font-size:10.5pt}
        nav,.skip{display:none}
        header,main,footer{max-width:none;padding:0}
        h2,h3,caption,figcaption,thead{break-after:avoid}
        figure,aside,tr,.answers li,.room{break-inside:avoid}
        .question{break-after:avoid}
        thead{display:table-header-group}
        .scroll{overflow:visible}
        .wide{display:block}
        .narrow{display:none}
        a{color:inherit;text-decoration:none}
        }

        """.ReplaceLineEndings("\n");
}
