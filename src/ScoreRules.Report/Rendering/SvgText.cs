using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Components;

namespace ScoreRules.Report.Rendering;

/// <summary>Words in a picture. "text" is an element of its own to the component compiler, so it is written here, its content encoded.</summary>
internal static class SvgText
{
    /// <summary>The element.</summary>
    /// <param name="style">Its style class; empty for none.</param>
    /// <param name="x">Its place from the left, a number or a share of the width.</param>
    /// <param name="y">Its base line from the top, a number or so many times the size of its letters ("0.9em").</param>
    /// <param name="content">What it says, not yet encoded.</param>
    public static MarkupString At(string style, string x, string y, string content) =>
        (MarkupString)$"<text{(style.Length == 0 ? "" : $" class=\"{style}\"")} x=\"{x}\" y=\"{y}\">{HtmlEncoder.Default.Encode(content)}</text>";
}
