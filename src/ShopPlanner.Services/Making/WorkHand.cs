using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Times;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making.Stored;

namespace ShopPlanner.Services.Making;

/// <summary>What becomes of the builder's hand.</summary>
/// <param name="Document">As it is to be.</param>
/// <param name="Title">What changed, for the undo button.</param>
internal sealed record HandChange(WorkDocument Document, string Title);

/// <summary>The builder's hand in a project's work: each verb returns what it would make of it, or why not.</summary>
internal sealed class WorkHand(PlannedWork planned, WorkDocument document)
{
    private const int MostOwn = 200;

    private readonly WorkComposing composing = new(planned, document);

    /// <summary>As it is.</summary>
    public WorkDocument Document => document;

    /// <summary>What the finish takes; null where the piece stays bare.</summary>
    public FinishAmounts? Finish => planned.Plan?.Finish;

    private ImmutableArray<WorkStep> Line => composing.Line;

    /// <summary>Another document.</summary>
    public static Outcome<HandChange> Changed(WorkDocument to, string title) => new HandChange(to, title);

    /// <summary>Marks a step.</summary>
    public Outcome<HandChange> Mark(string id, StepMark mark, DateTime now)
    {
        if (Find(id) is not { } step)
            return Outcome.Missing<HandChange>("step");
        var kept = document.Of(id);
        var title = composing.Title(step);
        return Keep(
            kept with
            {
                Title = title,
                DoneUtc = mark == StepMark.Done ? kept.DoneUtc ?? now : null,
                DoneAs = mark == StepMark.Done ? composing.Says(step) : [],
                IsSkipped = mark == StepMark.Skipped,
            },
            mark switch
            {
                StepMark.Done => title + ": done",
                StepMark.Skipped => title + ": left out",
                _ => title + ": not done",
            }
        );
    }

    /// <summary>Moves a step past its neighbor on a page.</summary>
    public Outcome<HandChange> Move(string id, WorkPage page, bool up)
    {
        if (Find(id) is not { } step)
            return Outcome.Missing<HandChange>("step");
        var at = Line.IndexOf(step);
        if (Neighbor(at, page, up) is not { } to)
            return Outcome.Faulty<HandChange>(Fault.Of("step", step.Title, up ? "is the first already" : "is the last already"));
        var held = up ? WorkOrder.Before(Line, to, at) : WorkOrder.After(Line, at, to);
        if (held is not null)
            return Outcome.Faulty<HandChange>(
                up
                    ? Fault.Of("step", step.Title, $"stays where it is: ‘{held.Title}’ has to be done first")
                    : Fault.Of("step", step.Title, $"stays where it is: ‘{held.Title}’ needs it done")
            );
        var order = Line.RemoveAt(at).Insert(to, step);
        return Changed(document with { Order = [.. order.Select(one => one.Id)] }, step.Title + (up ? ": up" : ": down"));
    }

    /// <summary>Adds a step behind the last one of a page.</summary>
    public Outcome<HandChange> Add(string id, WorkPage page, string title, string says)
    {
        var faults = StepTextReader.CheckNew(title, says);
        if (faults.Count > 0)
            return Outcome.Faulty<HandChange>(faults);
        if (document.Own.Length >= MostOwn)
            return Outcome.Faulty<HandChange>(
                Fault.Of("title", title, $"is one too many: a project has at most {MostOwn} steps of your own")
            );
        var own = new OwnStep(id, page == WorkPage.Finish, TextRules.Tidy(title), StepTextReader.Lines(says));
        var last = Enumerable.Range(0, Line.Length).LastOrDefault(i => WorkPages.Has(page, Line[i].Phase), -1);
        return Changed(
            document with
            {
                Own = document.Own.Add(own),
                Order = [.. Line.Select(step => step.Id).ToImmutableArray().Insert(last + 1, id)],
            },
            "new step " + own.Title
        );
    }

    /// <summary>Removes a step of the builder's own, or what was kept for one that is no longer there.</summary>
    public Outcome<HandChange> Remove(string id)
    {
        var own = document.Own.FirstOrDefault(one => one.Id == id);
        var lost = Find(id) is null ? document.Steps.FirstOrDefault(one => one.Id == id) : null;
        return own is null && lost is null
            ? Outcome.Missing<HandChange>("step")
            : Changed(document.Without(id), $"removal of {own?.Title ?? lost!.Title}");
    }

    /// <summary>Keeps what was typed about a step.</summary>
    public Outcome<HandChange> Write(StepTexts texts)
    {
        if (Find(texts.StepId) is not { } step)
            return Outcome.Missing<HandChange>("step");
        var faults = StepTextReader.Check(texts, planned.Unit);
        if (faults.Count > 0)
            return Outcome.Faulty<HandChange>(faults);
        var kept = document.Of(step.Id);
        var typed = kept with
        {
            Title = step.Title,
            Note = texts.Note,
            Measured = StepTextReader.Measured(texts),
            Took = WorkLogs.Time(step, texts.Took, kept.Took),
        };
        return document.Own.FirstOrDefault(own => own.Id == step.Id) is { } mine
            ? WriteOwn(mine, texts, typed)
            : Keep(
                typed with
                {
                    Words = StepTextReader.Words(step, texts, composing.Says(step), kept.Words),
                },
                step.Title + (typed.Took == kept.Took ? ": words" : ": time it took")
            );
    }

    /// <summary>Logs how long a step took and leaves its words.</summary>
    public Outcome<HandChange> Took(string id, string took)
    {
        if (Find(id) is not { } step)
            return Outcome.Missing<HandChange>("step");
        var kept = document.Of(id);
        return WorkLogs.Refuse(took) is { } fault
            ? Outcome.Faulty<HandChange>(fault)
            : Keep(
                kept with
                {
                    Title = composing.Title(step),
                    Took = WorkLogs.Time(step, took, kept.Took),
                },
                step.Title + ": time it took"
            );
    }

    /// <summary>Logs time at the saw.</summary>
    public Outcome<HandChange> AddSession(WorkSession session)
    {
        if (WorkLogs.RefuseSession(session.Took, document.Cutting.Length) is { } fault)
            return Outcome.Faulty<HandChange>(fault);
        var usual = Math.Max(0, session.CutSoFar - document.Cutting.Sum(one => one.Time.Usual));
        var stored = new StoredSession(
            session.Id,
            session.WhenUtc,
            new StoredTime(session.Took.Trim(), WorkTimes.Cutting, usual)
        );
        return Changed(document with { Cutting = document.Cutting.Add(stored) }, "time at the saw");
    }

    /// <summary>Writes the note of a step and leaves its other words.</summary>
    public Outcome<HandChange> Note(string id, string note)
    {
        if (Find(id) is not { } step)
            return Outcome.Missing<HandChange>("step");
        return StepTextReader.RefuseNote(note) is { } fault
            ? Outcome.Faulty<HandChange>(fault)
            : Keep(document.Of(id) with { Title = composing.Title(step), Note = note }, step.Title + ": note");
    }

    private Outcome<HandChange> WriteOwn(OwnStep own, StepTexts texts, StoredStep typed)
    {
        if (TextRules.Name("title", texts.Title) is { } fault)
            return Outcome.Faulty<HandChange>(fault);
        var changed = own with { Title = TextRules.Tidy(texts.Title), Says = StepTextReader.Lines(texts.Says) };
        var kept = document.With(typed with { Title = changed.Title });
        return Changed(kept with { Own = document.Own.Replace(own, changed) }, own.Title + ": words");
    }

    private Outcome<HandChange> Keep(StoredStep step, string title) => Changed(document.With(step), title);

    private WorkStep? Find(string id) => Line.FirstOrDefault(step => step.Id == id);

    private int? Neighbor(int at, WorkPage page, bool up)
    {
        var step = up ? -1 : 1;
        for (var i = at + step; i >= 0 && i < Line.Length; i += step)
            if (WorkPages.Has(page, Line[i].Phase))
                return i;
        return null;
    }
}
