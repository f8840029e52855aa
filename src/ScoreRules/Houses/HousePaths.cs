namespace ScoreRules.Houses;

/// <summary>Where houses and what they share are looked for, and how their files are named in messages.</summary>
internal static class HousePaths
{
    private const string Rulesets = "rulesets";
    private const string Shared = "shared";

    /// <summary>Whether a name is that of a file of rule text or of a spreadsheet.</summary>
    public static bool IsRuleText(string path) =>
        path.EndsWith(".rules", StringComparison.OrdinalIgnoreCase) || path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase);

    /// <summary>The files of a folder.</summary>
    /// <exception cref="HouseException">It cannot be read.</exception>
    public static List<string> FilesIn(string folder)
    {
        try
        {
            return [.. Directory.EnumerateFiles(folder).Where(IsRuleText).Select(path => Join(folder, Path.GetFileName(path)))];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new HouseException($"The folder \"{folder}\" cannot be read: {exception.Message}", exception);
        }
    }

    /// <summary>The folder that a house shares with others: a sibling named <c>shared</c>, or the nearest <c>rulesets/shared</c> above; null without one.</summary>
    public static string? SharedOf(string folder) => Name(folder) == Shared ? null : Around(folder).Select(place => Join(place, Shared)).FirstOrDefault(Directory.Exists);

    /// <summary>The folders in which the houses beside a house may stand: its own, and <c>rulesets</c> above.</summary>
    public static IEnumerable<string> Around(string folder)
    {
        var above = Above(folder);
        if (above is not null)
        {
            yield return Beside(folder);
        }

        for (var at = above; at is not null; at = Path.GetDirectoryName(at))
        {
            yield return Path.Combine(at, Rulesets);
        }

        yield return Rulesets;
    }

    /// <summary>The folders beside a house, by name, without itself and what is shared; of the first place that has any.</summary>
    public static List<string> Siblings(string folder)
    {
        var own = Path.GetFullPath(folder).TrimEnd(Path.DirectorySeparatorChar);
        return Around(folder).Where(Directory.Exists)
            .Select(place => Directory.EnumerateDirectories(place).Select(path => Join(place, Path.GetFileName(path)))
                .Where(path => Name(path) != Shared && Path.GetFullPath(path) != own).Order(StringComparer.Ordinal).ToList())
            .FirstOrDefault(houses => houses.Count > 0, []);
    }

    /// <summary>A name in a folder, with forward slashes.</summary>
    public static string Join(string folder, string name)
    {
        var trimmed = folder.Replace('\\', '/').TrimEnd('/');
        return trimmed is "." ? name : trimmed.Length == 0 ? "/" + name : trimmed + "/" + name;
    }

    private static string? Above(string folder) => Path.GetDirectoryName(Path.GetFullPath(folder).TrimEnd(Path.DirectorySeparatorChar));

    private static string Name(string folder) => Path.GetFileName(Path.GetFullPath(folder).TrimEnd(Path.DirectorySeparatorChar));

    // "rulesets/longreach/.." is shown as "rulesets".
    private static string Beside(string folder)
    {
        var trimmed = folder.Replace('\\', '/').TrimEnd('/');
        var cut = trimmed.LastIndexOf('/');
        var last = trimmed[(cut + 1)..];
        return last is "." or ".." or "" ? Join(folder, "..") : cut < 0 ? "." : trimmed[..cut];
    }
}
