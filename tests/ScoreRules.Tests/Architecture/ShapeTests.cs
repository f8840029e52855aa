using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Architecture;

/// <summary>Small files: what a reader meets.</summary>
public sealed class ShapeTests
{
    [Fact]
    public void No_file_is_over_400_lines_and_the_median_is_at_most_60()
    {
        var lengths = Directory.GetFiles(Support.Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories)
            .Where(path => !path.Contains("/obj/", StringComparison.Ordinal) && !path.Contains("\\obj\\", StringComparison.Ordinal))
            .Select(path => (Lines: File.ReadLines(path).Count(), Path: path)).OrderBy(file => file.Lines).ToList();

        lengths[^1].Lines.ShouldBeLessThanOrEqualTo(400, lengths[^1].Path);
        lengths[lengths.Count / 2].Lines.ShouldBeLessThanOrEqualTo(60);
    }
}
