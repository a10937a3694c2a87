using System.Collections.Immutable;
using ShopPlanner.Core.Making.Model;

namespace ShopPlanner.Core.Making.Assembly;

/// <summary>Writes the steps of all stages, with the dry fits before them and what is fitted after.</summary>
internal sealed class AssemblySteps
{
    private readonly Solids solids;
    private readonly WorkChoices choices;
    private readonly IReadOnlyList<Made> units;
    private readonly IReadOnlyList<Told> told;
    private readonly StepList steps = new();
    private readonly JoinSteps join;
    private readonly FitSteps fit;
    private readonly Tell tell;
    private readonly Dictionary<Made, string> last = [];
    private readonly Dictionary<Made, string> dry = [];
    private readonly bool isGlued;
    private bool isTried;
    private string? standing;

    public AssemblySteps(Solids solids, WorkChoices choices, IReadOnlyList<Made> units, IReadOnlyList<Told> told)
    {
        (this.solids, this.choices, this.units, this.told) = (solids, choices, units, told);
        isGlued = told.Any(one => one.Kind == StageKind.Glue && IsOfPiece(one.Of));
        tell = new Tell(solids);
        var supplies = new Supplies(solids);
        join = new JoinSteps(solids, WorkGlue.Of(choices.Glue, choices.Hours), supplies);
        fit = new FitSteps(solids, choices, supplies, steps);
    }

    /// <summary>Returns them in order.</summary>
    public ImmutableArray<WorkStep> Write()
    {
        fit.Count(told);
        for (var i = 0; i < told.Count; i++)
            Write(told[i], i);
        fit.Finish(standing, told);
        return steps.Sorted();
    }

    private void Write(Told one, int place)
    {
        // What is fitted while the piece is still open goes in with the assembly.
        var isEarly = told.Skip(place + 1).Any(later => later.Of.IsPiece && !FitSteps.IsFitting(later.Kind));
        if (FitSteps.IsFitting(one.Kind))
            Fit(one, isEarly);
        else
            Join(one, place);
    }

    private void Fit(Told one, bool isEarly)
    {
        var after = one.Parts.Select(part => last.GetValueOrDefault(part)).Prepend(standing).OfType<string>().ToList();
        var done = fit.Of(one, after, isEarly ? WorkPhase.Assembly : WorkPhase.Fitting);
        if (isEarly)
            standing = done;
    }

    private void Join(Told one, int place)
    {
        if (one.Kind == StageKind.Glue || (isGlued && IsOfPiece(one.Of)))
            Try(one);
        var after = one.Parts.Select(part => last.GetValueOrDefault(part)).Append(last.GetValueOrDefault(one.Of)).ToList();
        if (one.Number == 0 && one is { IsLate: false })
            after.AddRange(First(one));
        var step = join.Of(one, Id(one), IsInPlace(one, place) ? WorkPhase.InPlace : WorkPhase.Assembly) with
        {
            After = [.. after.OfType<string>().Distinct()],
            Subassembly = one.Of.IsPiece ? null : one.Of.Id,
        };
        steps.Add(step);
        last[one.Of] = step.Id;
        if (one.Of.IsPiece)
            standing = step.Id;
        if (one.Of.Kind == UnitKind.Panel && IsLast(one, place))
            last[one.Of] = fit.Trim(one, step.Id) ?? step.Id;
    }

    private bool IsLast(Told one, int place) => !told.Skip(place + 1).Any(later => later.Of == one.Of);

    // Drawers and doors are made to the standing piece, unless the builder has it otherwise.
    private IEnumerable<string?> First(Told one)
    {
        yield return dry.GetValueOrDefault(one.Of);
        if (one.Of.Units[0].IsFitted && choices.DoorsAfterCase)
            yield return standing;
    }

    private string Id(Told one)
    {
        var name =
            one.IsLate ? "ends"
            : one.Number == 0 && !one.Of.IsPiece ? ""
            : Added(one);
        return steps.Id("join", one.Of.Id, name);
    }

    private string Added(Told one) =>
        UnitNames.Slug(
            UnitNames.Of(solids, (one.Insertions.FirstOrDefault(two => two.Out is not null) ?? one.Insertions[0]).What)
        );

    // What is bolted comes apart, to be carried: it is put together where it is to stand.
    private bool IsInPlace(Told one, int place) =>
        one.Of.IsPiece
        && told.Take(place + 1).Any(before => before.Of.IsPiece && before.Kind == StageKind.Bolt)
        && !told.Skip(place).Any(later => FitSteps.IsFitting(later.Kind));

    // Every unit that is glued is tried first, and the whole before any part of it is glued.
    private void Try(Told one)
    {
        if (one.Of.Kind == UnitKind.Panel || one.Of.Units[0].IsFitted || IsInFitted(one.Of))
        {
            Try(one.Of, []);
            return;
        }

        if (isTried)
            return;
        isTried = true;
        var glued = told.Where(two => two.Kind == StageKind.Glue).Select(two => two.Of).Distinct().ToList();
        foreach (var unit in units.Where(unit => IsOfPiece(unit) && glued.Contains(unit)))
            Try(unit, []);
        var panels = units
            .Where(unit => unit.Kind == UnitKind.Panel)
            .Select(unit => last.GetValueOrDefault(unit))
            .OfType<string>();
        steps.Add(
            new(
                "dry:piece",
                WorkPhase.Assembly,
                WorkAction.DryFit,
                "Try the whole piece without glue",
                [
                    "Put everything together without glue or screws, in the order of the steps that follow.",
                    "Mark both parts of each joint with the same number. Check that the piece is square and its joints close.",
                    "Take it apart again.",
                ],
                [.. tell.Marks(Enumerable.Range(0, solids.All.Length).Where(copy => !IsFitted(copy)))],
                [.. panels, .. dry.Where(two => IsOfPiece(two.Key)).Select(two => two.Value)],
                30
            )
            {
                Tool = "square, pencil",
                Source = Sources.DryFit,
            }
        );
        foreach (var unit in units.Where(IsOfPiece))
            dry[unit] = "dry:piece";
        dry[one.Of] = "dry:piece";
    }

    private bool IsFitted(int copy) => told.Any(one => FitSteps.IsFitting(one.Kind) && one.Handled.Contains(copy));

    private static bool IsOfPiece(Made unit) => unit.Kind != UnitKind.Panel && !unit.Units[0].IsFitted && !IsInFitted(unit);

    private static bool IsInFitted(Made unit)
    {
        for (var within = unit.Within; within is not null; within = within.Within)
            if (within.Units[0].IsFitted)
                return true;
        return false;
    }

    private void Try(Made unit, ImmutableArray<string> after)
    {
        if (unit.IsPiece || dry.ContainsKey(unit))
            return;
        var id = steps.Id("dry", unit.Id, "");
        var parts = told.Where(one => one.Of == unit).SelectMany(one => one.Parts).Distinct();
        var before = parts.Select(part => last.GetValueOrDefault(part)).OfType<string>();
        steps.Add(
            new(
                id,
                WorkPhase.Assembly,
                WorkAction.DryFit,
                "Try "
                    + (unit.Units.Count > 1 ? UnitNames.Plural(unit.Name) : "the " + unit.Name.ToLowerInvariant())
                    + " without glue",
                [
                    "Put the parts together without glue, close all joints with clamps, and check for square.",
                    "Number the joints, and take it apart again.",
                ],
                [.. tell.Marks(unit.Copies)],
                [.. after, .. before],
                10 * unit.Units.Count
            )
            {
                Subassembly = unit.Id,
                Tool = "clamps, square",
                Source = Sources.DryFit,
            }
        );
        dry[unit] = id;
    }
}
