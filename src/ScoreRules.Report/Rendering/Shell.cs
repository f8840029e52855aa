using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;

namespace ScoreRules.Report.Rendering;

/// <summary>The document round a page: its policy allows this one style sheet and this one script, and nothing from outside.</summary>
internal static class Shell
{
    /// <summary>The whole document.</summary>
    public static string Wrap(PageFrame frame, string body)
    {
        var styles = Palette.Css() + frame.Styles + PrintMargins.Css(frame.Margin);
        var script = frame.Script.Length == 0 ? "" : $"\n<script>{frame.Script}</script>";
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{Policy(styles, frame.Script)}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="referrer" content="no-referrer">
            <meta name="color-scheme" content="light dark">
            <title>{HtmlEncoder.Default.Encode(frame.Title)}</title>
            <style>{styles}</style>
            </head>
            <body>
            {body}{script}
            </body>
            </html>

            """.ReplaceLineEndings("\n");
    }

    private static string Policy(string styles, string script) =>
        $"default-src 'none'; style-src '{Hash(styles)}'; script-src {(script.Length == 0 ? "'none'" : $"'{Hash(script)}'")}; base-uri 'none'; form-action 'none'";

    private static string Hash(string text) => $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}";
}
