namespace ScoreRules.Houses;

/// <summary>All files of a folder and the folders in it, byte for byte.</summary>
public static class FolderFiles
{
    /// <summary>Each file by its place below the folder, with forward slashes, in the order of those places.</summary>
    /// <exception cref="HouseException">Something in it cannot be read.</exception>
    public static SortedDictionary<string, byte[]> Read(string folder)
    {
        try
        {
            var files = Directory.EnumerateFiles(folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None, IgnoreInaccessible = false });
            return new SortedDictionary<string, byte[]>(files.ToDictionary(path => Path.GetRelativePath(folder, path).Replace('\\', '/'), File.ReadAllBytes), StringComparer.Ordinal);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new HouseException($"\"{folder}\" cannot be read: {problem.Message}", problem);
        }
    }

    /// <summary>The folders in a folder that hold a file of this name, by name; hidden ones are none.</summary>
    /// <exception cref="HouseException">The folder cannot be read.</exception>
    public static IReadOnlyList<string> FoldersWith(string folder, string file)
    {
        try
        {
            return Directory.Exists(folder)
                ? [.. Directory.EnumerateDirectories(folder).Select(path => Path.GetFileName(path)!).Where(name => !name.StartsWith('.') && File.Exists(Path.Combine(folder, name, file))).Order(StringComparer.Ordinal)]
                : [];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new HouseException($"\"{folder}\" cannot be read: {problem.Message}", problem);
        }
    }
}
