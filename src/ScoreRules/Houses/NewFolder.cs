namespace ScoreRules.Houses;

/// <summary>A folder for a new house.</summary>
public static class NewFolder
{
    /// <summary>Makes sure that nothing stands there yet.</summary>
    /// <exception cref="HouseException">There is a file, or a folder that is not empty.</exception>
    public static void Check(string folder)
    {
        if (File.Exists(folder))
        {
            throw new HouseException($"\"{folder}\" is a file. Name a folder that is not there yet.");
        }

        if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any())
        {
            throw new HouseException($"\"{folder}\" is not empty, so nothing is written there. Name a folder that is not there yet.");
        }
    }

    /// <summary>Makes the folder and writes files into it.</summary>
    /// <exception cref="HouseException">It cannot be written.</exception>
    public static void Write(string folder, IEnumerable<(string Name, string Text)> files)
    {
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new HouseException($"The folder \"{folder}\" cannot be made: {exception.Message}", exception);
        }

        foreach (var (name, text) in files)
        {
            RuleFiles.Write(Path.Combine(folder, name), text);
        }
    }
}
