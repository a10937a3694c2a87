using System.Globalization;
using ShopPlanner.Core.Making.Export;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Services.Publishing;

/// <summary>The order of work on the published page.</summary>
internal sealed class PublishedSteps(Html html, PublishedContent content)
{
    private readonly HashSet<string> told = new(StringComparer.Ordinal);

    /// <summary>Adds the steps, a list for each phase.</summary>
    public void Add()
    {
        html.Raw("<h2 id=\"steps\">How to build it</h2>");
        html.Add("p", "After all parts are cut. The packet has the cuts.");
        foreach (var finding in content.Work.Findings)
            html.Raw(
                $"<p class=\"safety\"><b>{Html.Escape(SeverityWords.Of(finding.Severity))}:</b> {Html.Escape(finding.Text)}</p>"
            );
        var number = 0;
        WorkPhase? phase = null;
        foreach (var step in content.Work.Steps)
        {
            if (phase != step.Phase)
                Begin(phase, step.Phase, number + 1);
            phase = step.Phase;
            Add(step, ++number);
        }

        if (phase is not null)
            html.Raw("</ol>");
    }

    private void Begin(WorkPhase? before, WorkPhase phase, int number)
    {
        if (before is not null)
            html.Raw("</ol>");
        html.Add("h3", StepWords.Of(phase));
        html.Raw(string.Create(CultureInfo.InvariantCulture, $"<ol class=\"steps\" start=\"{number}\">"));
    }

    private void Add(WorkStep step, int number)
    {
        html.Raw("<li class=\"step\"><div>");
        html.Add("h4", string.Create(CultureInfo.InvariantCulture, $"{number}. {step.Title}"));
        html.Add("p", step.Handles.IsEmpty ? "" : "Parts: " + string.Join(", ", step.Handles), "mark");
        foreach (var line in StepWords.Lines(step, content.Piece.Unit))
            html.Add("p", line);
        html.Add("p", step.Check is { } check ? "If not: " + check.Remedy : "");
        // In full where it comes first: read ten times, it is read no more.
        foreach (var caution in step.Cautions.Where(one => told.Add(one.Id)))
            html.Raw($"<p class=\"safety\"><b>Safety:</b> {Html.Escape(caution.Text)}</p>");
        html.Raw("</div>");
        if (content.StepPictures.TryGetValue(step.Id, out var path))
            html.Raw($"<img src=\"{path}\" alt=\"{Html.Escape(step.Title)}\" loading=\"lazy\">");
        html.Raw("</li>");
    }
}
