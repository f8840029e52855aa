using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using System.Text.Unicode;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace ScoreRules.Report.Rendering;

/// <summary>Components as text. Whatever comes from rule text is encoded by the renderer.</summary>
internal static partial class ComponentText
{
    /// <summary>Renders one component with one parameter.</summary>
    public static string Render<TComponent>(string parameter, object value)
        where TComponent : IComponent
    {
        var encoder = HtmlEncoder.Create(UnicodeRanges.All);
        using var services = new ServiceCollection().AddSingleton(encoder).BuildServiceProvider();
        using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        var parameters = ParameterView.FromDictionary(new Dictionary<string, object?>(StringComparer.Ordinal) { [parameter] = value });

        // Nothing here waits for anything: the components are plain functions of what they are given.
        return Shorter(renderer.Dispatcher.InvokeAsync(async () => (await renderer.RenderComponentAsync<TComponent>(parameters).ConfigureAwait(true)).ToHtmlString()).GetAwaiter().GetResult());
    }

    // A plus and a blank that does not break need no escape in UTF-8, nor do line starts of components their blanks; line ends inside
    // rule text are escaped, so none of those is touched. HTML ends items and cells by itself, and SVG shapes can end themselves.
    private static string Shorter(string html)
    {
        var plain = LineStart().Replace(html, "\n").Replace("&#xA0;", "\u00a0", StringComparison.Ordinal).Replace("&#x2B;", "+", StringComparison.Ordinal);
        return ShapeEnd().Replace(NeedlessEnd().Replace(QuotedText().Replace(plain, Unquote), ""), "/>");
    }

    // Outside tags a quotation mark is a sign like any other; the renderer leaves no ">" inside a tag.
    private static string Unquote(Match text) => text.Value.Replace("&quot;", "\"", StringComparison.Ordinal);

    [GeneratedRegex(@"\n\s+", RegexOptions.None, 10_000)]
    private static partial Regex LineStart();

    [GeneratedRegex(@">[^<]*&quot;[^<]*", RegexOptions.None, 10_000)]
    private static partial Regex QuotedText();

    [GeneratedRegex(@"</li>\s*(?=<li\b|</[uo]l>)|</t[dh]>\s*(?=<t[dh]\b|</tr>)|</tr>\s*(?=<tr\b|</t(body|head|foot)>)", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex NeedlessEnd();

    [GeneratedRegex(@"></(rect|line|circle|path)>", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex ShapeEnd();
}
