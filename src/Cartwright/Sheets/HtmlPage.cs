using System.Net;
using System.Text;

namespace Cartwright.Sheets;

/// <summary>A page of HTML that prints well: headings, tables, lists; nothing is fetched and nothing runs.</summary>
/// <param name="title">The page's title.</param>
internal sealed class HtmlPage(string title)
{
    private const string Style =
        "body{font:11pt/1.4 sans-serif;max-width:60em;margin:1.5em auto;padding:0 1em;color:#111;background:#fff}"
        + "h1{margin:0 0 .2em}h2{margin:1.4em 0 .3em;border-bottom:1px solid #888}"
        + "table{border-collapse:collapse;width:100%}th,td{border:1px solid #888;padding:.25em .5em;text-align:left;vertical-align:top}"
        + "th{background:#eee}.box{font-size:1.3em}@media print{body{margin:0}h2,tr{break-inside:avoid}}";

    private readonly StringBuilder _body = new();

    public void Heading(int level, string text) => _body.Append($"<h{level}>{Safe(text)}</h{level}>\n");

    public void Paragraph(string text) => _body.Append($"<p>{Safe(text)}</p>\n");

    public void List(IEnumerable<string> items)
    {
        _body.Append("<ul>\n");
        foreach (var item in items)
        {
            _body.Append($"<li>{Safe(item)}</li>\n");
        }

        _body.Append("</ul>\n");
    }

    public void Table(IEnumerable<string> head, IEnumerable<IEnumerable<string>> rows)
    {
        _body.Append("<table>\n<tr>").Append(string.Concat(head.Select(static cell => $"<th>{Safe(cell)}</th>"))).Append("</tr>\n");
        foreach (var row in rows)
        {
            _body.Append("<tr>").Append(string.Concat(row.Select(static cell => $"<td>{Safe(cell)}</td>"))).Append("</tr>\n");
        }

        _body.Append("</table>\n");
    }

    public override string ToString() =>
        $"<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width\">\n<title>{Safe(title)}</title>\n<style>{Style}</style>\n</head>\n<body>\n{_body}</body>\n</html>\n";

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
