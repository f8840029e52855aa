using System.Text;
using System.Xml;
using ScoreRules.Guarding;
using ScoreRules.Language.Diagnostics;

namespace ScoreRules.Publishing;

/// <summary>
/// A tested house in the XML form that build servers read: one case for each expectation, one for each finding that stops
/// or fails the test. Times are 0: the same house gives the same bytes.
/// </summary>
public static class JunitReport
{
    /// <summary>The whole document.</summary>
    public static string Print(Judgement judgement)
    {
        var text = new StringBuilder();
        var settings = new XmlWriterSettings { Indent = true, NewLineChars = "\n", OmitXmlDeclaration = true };
        using (var xml = XmlWriter.Create(text, settings))
        {
            var failing = TestRule.Failing(judgement);
            var failed = judgement.Expectations.Count(result => !result.Holds);
            xml.WriteStartElement("testsuites");
            WriteCounts(xml, judgement, failed, failing.Length);
            xml.WriteStartElement("testsuite");
            WriteCounts(xml, judgement, failed, failing.Length);
            foreach (var finding in failing)
            {
                WriteFinding(xml, judgement, finding);
            }

            foreach (var result in judgement.Expectations)
            {
                WriteExpectation(xml, judgement, result);
            }

            xml.WriteEndElement();
            xml.WriteEndElement();
        }

        return "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n" + text + "\n";
    }

    private static string Name(Judgement judgement) => judgement.Ruleset.House?.Name ?? "house";

    private static void WriteCounts(XmlWriter xml, Judgement judgement, int failed, int errors)
    {
        Attribute(xml, "name", Name(judgement));
        Attribute(xml, "tests", NumberText.Count(judgement.Expectations.Length + errors));
        Attribute(xml, "failures", NumberText.Count(failed));
        Attribute(xml, "errors", NumberText.Count(errors));
        Attribute(xml, "time", "0");
    }

    private static void WriteFinding(XmlWriter xml, Judgement judgement, Diagnostic finding)
    {
        StartCase(xml, judgement, $"{finding.Code} at {finding.Location}", finding.Location);
        xml.WriteStartElement("error");
        Attribute(xml, "type", finding.Code);
        Attribute(xml, "message", finding.Headline);
        xml.WriteString(Sound(DiagnosticText.Full(finding)));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void WriteExpectation(XmlWriter xml, Judgement judgement, ExpectationResult result)
    {
        StartCase(xml, judgement, result.Expectation.Info.Location.Text, result.Expectation.Info.Location);
        if (!result.Holds)
        {
            xml.WriteStartElement("failure");
            Attribute(xml, "type", "SR8001");
            Attribute(xml, "message", result.Found);
            xml.WriteString(Sound(new ExpectationText(judgement).Print(result)));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    private static void StartCase(XmlWriter xml, Judgement judgement, string name, Language.Text.SourceLocation place)
    {
        xml.WriteStartElement("testcase");
        Attribute(xml, "classname", Name(judgement));
        Attribute(xml, "name", name);
        Attribute(xml, "file", place.Path);
        Attribute(xml, "line", NumberText.Count(place.Line));
        Attribute(xml, "time", "0");
    }

    private static void Attribute(XmlWriter xml, string name, string value) => xml.WriteAttributeString(name, Sound(value));

    // XML has no way to hold most control characters, not even escaped.
    private static string Sound(string text) => string.Concat(text.EnumerateRunes().Select(rune => rune.Value > char.MaxValue || XmlConvert.IsXmlChar((char)rune.Value) ? rune.ToString() : "\uFFFD"));
}
