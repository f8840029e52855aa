using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Cases;

/// <summary>
/// Files of the kind a newcomer writes, with all messages they lead to, kept in Markdown for people to read. Each says how
/// many faults were planted in it; there are as many messages. SCORERULES_REWRITE=1 rewrites the messages, never on CI.
/// </summary>
public sealed class CaseFileTests
{
    private const int MostRounds = 10;

    public static TheoryData<string> Files() => [.. CaseFile.Names];

    [Theory]
    [MemberData(nameof(Files))]
    public void The_messages_are_those_kept(string file)
    {
        var kept = new CaseFile(file);
        MarkdownBlocks.In(kept.Markdown).Count(block => block.Info == "diagnostics").ShouldBe(1, $"{file} has no block of messages, or several");
        Golden.Check(MarkdownBlocks.Replace(kept.Markdown, "diagnostics", CaseFile.Printed(CaseFile.Findings(kept.Rules))), "tests", "ScoreRules.Tests", "Cases", file);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void There_are_as_many_messages_as_planted_faults(string file)
    {
        var kept = new CaseFile(file);
        var findings = CaseFile.Findings(kept.Rules);
        findings.Length.ShouldBe(kept.Planted ?? throw new InvalidOperationException($"{file} does not say how many faults were planted"), CaseFile.Printed(findings));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_message_stands_in_the_broken_file(string file) =>
        CaseFile.Findings(new CaseFile(file).Rules).ShouldAllBe(finding => finding.Location.Path == "house.rules");

    [Theory]
    [MemberData(nameof(Files))]
    public void Applying_all_safe_edits_again_and_again_ends_with_none_left(string file)
    {
        var text = new CaseFile(file).Rules;
        for (var round = 0; round < MostRounds; round++)
        {
            var edits = SafeEdits.Of(CaseFile.Findings(text));
            if (edits.Count == 0)
            {
                return;
            }

            text = SafeEdits.Apply(text, edits);
        }

        Assert.Fail($"{file}: safe edits do not end:\n{text}");
    }

    [Fact]
    public void The_vocabulary_itself_has_no_fault() => CaseFile.Findings("").ShouldBeEmpty();
}
