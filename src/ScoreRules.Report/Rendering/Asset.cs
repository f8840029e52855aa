using System.Collections.Immutable;

namespace ScoreRules.Report.Rendering;

/// <summary>Styles and scripts kept inside the program.</summary>
internal static class Asset
{
    private static readonly ImmutableArray<string> StyleParts = ["base.css", "front.css", "ladder.css", "card.css", "tools.css", "print.css"];
    private static readonly ImmutableArray<string> ScriptParts = ["start.js", "find.js", "filter.js", "compare.js", "guess.js", "sort.js", "print.js"];

    /// <summary>All styles, in order, without the tokens.</summary>
    public static string Styles { get; } = string.Concat(StyleParts.Select(Read));

    /// <summary>The styles of a lesson.</summary>
    public static string LessonStyles { get; } = string.Concat(((string[])["base.css", "lesson.css"]).Select(Read));

    /// <summary>The styles of the slides of a lesson.</summary>
    public static string SlideStyles { get; } = LessonStyles + Read("slides.css");

    /// <summary>The styles of a list of editions.</summary>
    public static string EditionStyles { get; } = string.Concat(((string[])["base.css", "editions.css"]).Select(Read));

    /// <summary>The whole script: its parts share one scope.</summary>
    public static string Script { get; } = $"\"use strict\";\n(() => {{\n{string.Concat(ScriptParts.Select(Read))}}})();\n";

    private static string Read(string name)
    {
        using var stream = typeof(Asset).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is missing from the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
