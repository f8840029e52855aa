using System.Globalization;
using System.Text;
using ScoreRules.Benchmarks.Workloads;

namespace ScoreRules.Benchmarks.Peers;

/// <summary>Writes the generated rules in the language of CLIPS.</summary>
internal static class ClipsText
{
    private const string After = """
        (deffunction measure ()
          (bind ?start (time))
          (load-facts "facts.clp")
          (run)
          (bind ?end (time))
          (open "held.txt" out "w")
          (printout out (- ?end ?start) crlf)
          (do-for-all-facts ((?h held)) TRUE (printout out ?h:rule " " ?h:id crlf))
          (close out))
        (measure)
        (exit)
        """;

    /// <summary>A batch that loads the facts, runs the rules and writes what held, the seconds in the first line.</summary>
    public static string Write(RuleBase rules)
    {
        var text = new StringBuilder();
        var slots = string.Join(' ', Enumerable.Range(0, rules.Attributes.Length).Select(Slot).Select(slot => $"(slot {slot})"));
        text.Append("(deftemplate m (slot id) (slot t) ").Append(slots).Append(")\n");
        text.Append("(deftemplate called (slot fact) (slot id))\n(deftemplate held (slot rule) (slot id))\n");
        for (var i = 0; i < rules.Rules.Length; i++)
        {
            text.Append(Rule(rules.Rules[i], Number(i), rules.Attributes.Length)).Append('\n');
        }

        return text.Append(After).Append('\n').ToString();
    }

    /// <summary>The movements as facts.</summary>
    public static string Facts(Rows rows)
    {
        var text = new StringBuilder();
        for (var row = 0; row < rows.Count; row++)
        {
            var id = row;
            var values = rows.Columns.Select((column, index) => $"({Slot(index)} {Number(column[id])})");
            text.Append(CultureInfo.InvariantCulture, $"(m (id {row}) (t {rows.Targets[row]}) {string.Join(' ', values)})\n");
        }

        return text.ToString();
    }

    private static string Rule(WorkloadRule rule, string index, int attributeCount)
    {
        var read = rule.Tests.Concat(rule.Unless is null ? [] : [rule.Unless]).Where(test => test.Kind != TestKind.Called).Select(test => test.Subject).Distinct().Where(subject => subject < attributeCount);
        var slots = string.Join(' ', read.Select(subject => $"({Slot(subject)} ?{Slot(subject)})"));
        var target = rule.OnlyTarget < 0 ? "" : $"(t {Number(rule.OnlyTarget)}) ";
        var tests = $"(test ({(rule.IsAny ? "or" : "and")} {string.Join(' ', rule.Tests.Select(Test))} {(rule.IsAny ? "FALSE" : "TRUE")}))";
        var also = rule.Also is { } fact ? $"(called (fact {Number(fact.Subject)}) (id ?id))" : "";
        var action = rule.Kind == RuleKind.Call ? $"(assert (called (fact {Number(rule.Fact)}) (id ?id)))" : "";
        return $"(defrule r{index} (declare (salience {Number(-rule.Level)})) (m (id ?id) {target}{slots}) {tests} {also} {Unless(rule)} => (assert (held (rule {index}) (id ?id))) {action})";
    }

    private static string Unless(WorkloadRule rule) => rule.Unless switch
    {
        null => "",
        { Kind: TestKind.Called } called => $"(not (called (fact {Number(called.Subject)}) (id ?id)))",
        var test => $"(test (not {Test(test)}))",
    };

    private static string Test(WorkloadTest test) => test.Kind switch
    {
        TestKind.AtLeast => $"(>= ?{Slot(test.Subject)} {Number(test.Value)})",
        TestKind.AtMost => $"(<= ?{Slot(test.Subject)} {Number(test.Value)})",
        TestKind.Is => $"(= ?{Slot(test.Subject)} {Number(test.Value)})",
        _ => $"(<> ?{Slot(test.Subject)} {Number(test.Value)})",
    };

    private static string Slot(int attribute) => $"a{Number(attribute)}";

    private static string Number(double number) => number.ToString(CultureInfo.InvariantCulture);
}
