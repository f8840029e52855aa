using System.Collections.Immutable;
using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Catalogue;

/// <summary>Fills in the geometry that a movement takes over: one line for each name, what is inherited keeps its place in the order.</summary>
internal static class GeometryInheritance
{
    /// <summary>The lines of a movement, inherited ones replaced where it says "but"; reports SR7004, SR7005 and SR7008.</summary>
    public static ImmutableArray<GeometryLine> Of(ResolvedMovement movement, DiagnosticBag findings)
    {
        var inherited = movement.Original?.Geometry ?? [];
        var lines = inherited.ToList();
        var stated = new Dictionary<string, GeometryLine>(StringComparer.Ordinal);
        foreach (var line in movement.Declaration.Geometry)
        {
            if (!stated.TryAdd(line.Name, line))
            {
                findings.Add(FactFindings.StatedTwice(movement.Declaration, line.Name, line.Location, stated[line.Name].Location));
                continue;
            }

            var at = lines.FindIndex(other => other.Name == line.Name);
            CheckBut(movement, line, at < 0 ? null : lines[at], findings);
            if (at < 0)
            {
                lines.Add(line);
            }
            else
            {
                lines[at] = line;
            }
        }

        return [.. lines];
    }

    private static void CheckBut(ResolvedMovement movement, GeometryLine line, GeometryLine? inherited, DiagnosticBag findings)
    {
        if (line.IsBut && inherited is null && !movement.HasCutLink)
        {
            findings.Add(FactFindings.NothingToReplace(movement, line));
        }
        else if (!line.IsBut && inherited is not null)
        {
            findings.Add(FactFindings.ReplacesSilently(movement, line, inherited));
        }
    }
}
