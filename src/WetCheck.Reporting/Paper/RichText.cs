using System.Net;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace WetCheck.Reporting;

/// <summary>Markdown of a rule's own text as HTML that loads nothing, runs nothing and links only to plain web addresses.</summary>
internal static class RichText
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().UsePipeTables().Build();

    public static string Html(string markdown)
    {
        try
        {
            var document = Markdown.Parse(markdown, Pipeline);
            foreach (var link in document.Descendants<LinkInline>().ToList())
            {
                if (link.IsImage || !IsPlain(link.Url))
                {
                    var text = string.Concat(link.Descendants<LiteralInline>().Select(literal => literal.Content.ToString()));
                    link.ReplaceBy(new LiteralInline(text), copyChildren: false);
                }
            }

            foreach (var link in document.Descendants<AutolinkInline>().ToList())
            {
                if (!link.IsEmail && !IsPlain(link.Url))
                {
                    link.ReplaceBy(new LiteralInline(link.Url));
                }
            }

            return document.ToHtml(Pipeline).Trim();
        }
        catch (ArgumentException)
        {
            // Markdig's word for nesting that is too deep.
            return WebUtility.HtmlEncode(markdown);
        }
    }

    private static bool IsPlain(string? url) =>
        url is not null
            && (url.StartsWith('#')
            || (Uri.TryCreate(url, UriKind.Absolute, out var address) && address.Scheme is "http" or "https"));
}
