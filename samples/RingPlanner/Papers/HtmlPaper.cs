using System.Net;
using System.Text;

namespace RingPlanner.Papers;

/// <summary>One HTML page that needs nothing else: style and drawings are in it. It prints on paper as it stands.</summary>
internal sealed class HtmlPaper(string title) : Paper
{
    private const string Style = """
        :root { color-scheme: light; }
        body { font: 15px/1.45 system-ui, "Segoe UI", "DejaVu Sans", sans-serif; color: #1c1c1c; background: #fff; max-width: 60rem; margin: 1.5rem auto; padding: 0 1rem; }
        h1 { font-size: 1.5rem; border-bottom: 3px solid #1c1c1c; margin: 2.2rem 0 .8rem; }
        h2 { font-size: 1.1rem; margin: 1.4rem 0 .4rem; }
        dl { display: grid; grid-template-columns: 12.5rem 1fr; gap: .2rem 1rem; margin: .3rem 0; }
        dt { font-weight: 600; } dd { margin: 0; }
        table { border-collapse: collapse; margin: .6rem 0; font-variant-numeric: tabular-nums; }
        th, td { border: 1px solid #8a8a8a; padding: .2rem .6rem; text-align: left; vertical-align: top; }
        th { background: #eee; font-weight: 600; } .n { text-align: right; }
        p.mark { border-left: 5px solid #1c1c1c; background: #f3f3f3; padding: .4rem .8rem; margin: .5rem 0; }
        figure { margin: .8rem 0; } figure svg { max-width: 100%; height: auto; } figcaption { font-size: .9rem; color: #444; }
        @media (max-width: 40rem) { dl { grid-template-columns: 1fr; } dd { margin-bottom: .4rem; } table { display: block; overflow-x: auto; } }
        @media print { body { margin: 0; max-width: none; font-size: 11px; } h1 { break-before: page; } h1:first-of-type { break-before: auto; } figure, table, p.mark { break-inside: avoid; } }
        """;

    private readonly StringBuilder _body = new();

    private bool _inList;

    private int _drawings;

    public override bool ShowsPictures => true;

    public override void Title(string text) => Block($"<h1>{Encoded(text)}</h1>");

    public override void Heading(string text) => Block($"<h2>{Encoded(text)}</h2>");

    public override void Gap() => EndList();

    public override void Fact(string label, string text)
    {
        if (!_inList)
        {
            _body.Append("<dl>\n");
            _inList = true;
        }

        _body.Append("<dt>").Append(Encoded(label.Trim())).Append("</dt><dd>").Append(Encoded(text)).Append("</dd>\n");
    }

    public override void Marked(string mark, string text) => Block($"<p class=\"mark\"><b>{Encoded(mark)}</b> {Encoded(text)}</p>");

    public override void Sentence(string text) => Block($"<p>{Encoded(text)}</p>");

    public override void Show(Listing listing)
    {
        EndList();
        _body.Append("<table>\n<tr>");
        foreach (Column column in listing.Columns)
        {
            _body.Append(column.IsNumber ? "<th class=\"n\">" : "<th>")
                .Append(Encoded(column.Heading).Replace("\n", "<br>", StringComparison.Ordinal)).Append("</th>");
        }

        foreach (IReadOnlyList<string> row in listing.Rows)
        {
            _body.Append("</tr>\n<tr>");
            for (int i = 0; i < row.Count; i++)
            {
                _body.Append(listing.Columns[i].IsNumber ? "<td class=\"n\">" : "<td>").Append(Encoded(row[i])).Append("</td>");
            }
        }

        _body.Append("</tr>\n</table>\n");
    }

    /// <summary>A drawing made as a file of its own loses the beginning of a file, and its names are made the page's only ones.</summary>
    public override void Picture(string caption, string svg)
    {
        string own = $"d{++_drawings}-";
        string drawing =
            svg[svg.IndexOf("<svg", StringComparison.Ordinal)..].Replace("id=\"", "id=\"" + own, StringComparison.Ordinal)
                .Replace("\"url(#", "\"url(#" + own, StringComparison.Ordinal);
        Block($"<figure>{drawing}<figcaption>{Encoded(caption)}</figcaption></figure>");
    }

    public override string ToString()
    {
        EndList();
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{Encoded(title)}</title>
            <style>
            {Style}
            </style>
            </head>
            <body>
            {_body}</body>
            </html>

            """;
    }

    private static string Encoded(string text) => WebUtility.HtmlEncode(text);

    private void Block(string html)
    {
        EndList();
        _body.Append(html).Append('\n');
    }

    private void EndList()
    {
        if (_inList)
        {
            _body.Append("</dl>\n");
            _inList = false;
        }
    }
}
