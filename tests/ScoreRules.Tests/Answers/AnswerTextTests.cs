using ScoreRules.Answers;
using ScoreRules.Houses;
using ScoreRules.Language;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Publishing;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Answers;

/// <summary>Answers in words, kept in files to be read: a change of wording or of a figure is seen.</summary>
public sealed class AnswerTextTests
{
    public static TheoryData<string, string> Questions() => new()
    {
        { "why", "why seated leg curl is above lying leg curl" },
        { "why-not", "why not complete stimulus for barbell curl" },
        { "how-firmly", "how firmly hack squat is above leg press" },
        { "what-lifts", "what lifts dumbbell kickback to Level with the benchmark" },
        { "what-is-lost", "what is lost without cable column for elbow flexors, elbow extensors" },
        { "what-to-buy", "what to buy\n  using profile quiet garage" },
        { "sore-joint", "what a sore elbow costs" },
        { "what-is-forgotten", "what is forgotten for hamstrings" },
        { "what-is-misplaced", "what is misplaced" },
        { "what-is-shaky", "what is shaky for hamstrings, calves" },
        { "where-is-shaky", "where nordic curl is shaky" },
        { "new-study", "what a study of nordic curl against lying leg curl would change" },
        { "what-rests-on", "what rests on wrist tolerance" },
    };

    [Theory]
    [MemberData(nameof(Questions))]
    public void An_answer_of_Longreach_reads_as_it_is_kept(string name, string question)
    {
        var (judgement, answer) = Ask(question);
        var text = new AnswerText(judgement).Print([answer]);
        text.Split('\n').ShouldAllBe(line => line.Length <= 78);
        text.ShouldContain("Education, not medical advice.");
        Golden.Check(text, "tests", "ScoreRules.Tests", "Golden", "answers", $"{name}.txt");
    }

    [Theory]
    [MemberData(nameof(Questions))]
    public void Json_holds_the_same_sentences_and_fits_its_schema(string name, string question)
    {
        var (judgement, answer) = Ask(question);
        var json = AnswerJson.Print(judgement, [answer]);
        SchemaCheck.Faults(json, Repository.Read("docs", "schema", "ask.schema.json")).ShouldBeEmpty(name);
        json.ShouldContain("Education, not medical advice.");
    }

    [Fact]
    public void Every_kind_of_question_has_a_form_and_an_answer()
    {
        QuestionForms.All.Select(form => form.Kind).ShouldBe(Enum.GetValues<QuestionKind>());
        AskGrammar.All.Select(head => head.Kind).ShouldBe(Enum.GetValues<QuestionKind>(), ignoreOrder: true);
        foreach (var (head, kind) in AskGrammar.All)
        {
            QuestionForms.All.Single(form => form.Kind == kind).Form.ShouldStartWith(head.Words["ask ".Length..]);
        }
    }

    [Fact]
    public void The_same_question_gives_the_same_bytes()
    {
        var (judgement, answer) = Ask("what lifts dumbbell kickback to Level with the benchmark");
        AnswerJson.Print(judgement, [answer]).ShouldBe(AnswerJson.Print(judgement, [Answerer.Answer(judgement, answer.Question, judgement.Rankings)]));
    }

    private static (Judgement Judgement, Answer Answer) Ask(string question)
    {
        var read = HouseFolder.Read(Repository.PathOf("rulesets", "longreach"));
        read = read with { Files = [.. read.Files.Select(file => file with { Path = Path.GetRelativePath(Repository.Root, file.Path).Replace('\\', '/') })] };
        var judgement = Judge.Run(read.WithQuestion(question)) with { Sources = read };
        var asked = judgement.Ruleset.Questions.Single(one => HouseSources.IsQuestion(one.Info.Location.Path));
        return (judgement, Answerer.Answer(judgement, asked, judgement.Rankings));
    }
}
