using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using ScoreRules.Report.Views;

namespace ScoreRules.Report.Rendering;

/// <summary>The document round the page: its policy allows this one style sheet and this one script, and nothing from outside.</summary>
internal static class Shell
{
    /// <summary>The whole document.</summary>
    public static string Wrap(ReportView view, string body)
    {
        var styles = Palette.Css() + Asset.Styles + PrintMargins.Css(view);
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{Policy(styles, Asset.Script)}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="referrer" content="no-referrer">
            <meta name="color-scheme" content="light dark">
            <title>{HtmlEncoder.Default.Encode(view.Title)}</title>
            <style>{styles}</style>
            </head>
            <body>
            {body}
            <script>{Asset.Script}</script>
            </body>
            </html>

            """.ReplaceLineEndings("\n");
    }

    private static string Policy(string styles, string script) =>
        $"default-src 'none'; style-src '{Hash(styles)}'; script-src '{Hash(script)}'; base-uri 'none'; form-action 'none'";

    private static string Hash(string text) => $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}";
}
