using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Core.Tests.Making.Finishes;

/// <summary>What holds for every finish on every built-in design, whatever is chosen.</summary>
public sealed partial class FinishPlanTests
{
    private const int Trials = 40;

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void Every_step_comes_after_what_it_needs(string name)
    {
        foreach (var (piece, choices) in Cases(name))
        {
            var plan = FinishPlanner.Of(piece, choices);
            var done = new HashSet<string>();
            var marks = piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).ToHashSet();
            foreach (var step in plan.Steps)
            {
                Assert.All(step.After, before => Assert.Contains(before, done));
                Assert.True(done.Add(step.Id), step.Id);
                Assert.Matches(IdForm(), step.Id);
                Assert.NotEmpty(step.Says);
                Assert.NotEmpty(step.Handles);
                Assert.All(step.Handles, mark => Assert.Contains(mark, marks));
                Assert.NotNull(step.Source);
                Assert.InRange(step.Minutes, 0, 60 * 24);
                Assert.True(step.Wait is not { Minutes: < 0 }, step.Id);
                Assert.True(step.Phase is WorkPhase.FinishBefore or WorkPhase.Finish, step.Id);
            }
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Nothing_of_before_assembly_waits_for_what_comes_after(string name)
    {
        foreach (var (piece, choices) in Cases(name))
        {
            var phases = FinishPlanner.Of(piece, choices).Steps.ToDictionary(step => step.Id, step => step);
            Assert.All(
                phases.Values.Where(step => step.Phase == WorkPhase.FinishBefore),
                step => Assert.All(step.After, id => Assert.Equal(WorkPhase.FinishBefore, phases[id].Phase))
            );
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_face_gets_its_coats_before_or_after_assembly(string name)
    {
        foreach (var (piece, choices) in Cases(name))
        {
            var plan = FinishPlanner.Of(piece, choices);
            if (plan.Amounts is not { } amounts)
                continue;
            var coated = plan
                .Steps.Where(step => step.Action is WorkAction.Coat or WorkAction.Rub or WorkAction.Stain or WorkAction.Prime)
                .ToLookup(step => step.Phase);
            foreach (var part in piece.Parts)
            {
                var area = amounts.Areas.SingleOrDefault(one => one.Part == part.Id);
                if (area is null)
                    continue;
                var marks = part.Copies.Select(copy => copy.Mark).ToHashSet();
                var (before, after) = (Handled(coated[WorkPhase.FinishBefore], marks), Handled(coated[WorkPhase.Finish], marks));
                Assert.True(area.BeforeAssembly > Area.Zero || !before, part.Name);
                Assert.True(area.Area == area.BeforeAssembly || after, part.Name);
                Assert.Equal(area.Area > Area.Zero, before || after);
                Assert.True(area.BeforeAssembly * 8 < area.Area || before || area.Area == Area.Zero, part.Name);
            }
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void The_same_choices_give_the_same_plan(string name)
    {
        foreach (var (piece, choices) in Cases(name).Take(8))
            Assert.Equal(Told(FinishPlanner.Of(piece, choices)), Told(FinishPlanner.Of(piece, choices)));
    }

    // Slats may come closer than a hand: then they are finished before.
    [Theory, MemberData(nameof(Names))]
    public void Ids_stay_while_sizes_change(string name)
    {
        var document = DesignFiles.Read(name);
        var first = Ids(DesignEvaluator.Evaluate(document, new Dictionary<string, string>()).Piece!);
        foreach (var values in DesignValues.Of(document, Trials, 20261205).TakeLast(Trials))
        {
            var other = Ids(DesignEvaluator.Evaluate(document, values).Piece!);
            Assert.All(
                other.Concat(first).Except(other.Intersect(first)),
                id => Assert.Contains("before:", id, StringComparison.Ordinal)
            );
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void No_figure_is_told_that_has_no_source(string name)
    {
        foreach (var (piece, choices) in Cases(name))
        {
            var known = Known(choices, piece);
            var plan = FinishPlanner.Of(piece, choices);
            foreach (var text in Texts(plan))
                Assert.All(Figures().Matches(text).Select(match => match.Value), figure => Assert.Contains(figure, known));
        }
    }

    [Fact]
    public void Texts_are_whole_sentences()
    {
        foreach (var design in DesignFiles.Names)
        foreach (var finish in FinishChoices.All)
        {
            var plan = Finished.Plan(design, finish.Id);
            var sentences = plan.Steps.SelectMany(step => step.Says).Concat(plan.Findings.Select(finding => finding.Text));
            Assert.All(sentences, text => Assert.Matches("^[A-Z‘].*[.]$", text));
            Assert.All(plan.Steps, step => Assert.Matches("^[A-Z][^.]*$", step.Title));
            Assert.All(plan.Steps, step => Assert.InRange(step.Title.Length, 4, 64));
        }
    }

    [Fact]
    public void A_piece_of_two_thousand_copies_is_planned_in_a_moment()
    {
        var part = """
            { "name": "Slat", "material": "slat", "length": "20 in", "along": "x", "flat": "z",
              "at": [ [ "0 in", "0 in", "0 in" ], [ "0 in", "1875 in", "0 in" ] ], "repeat": { "count": "1000", "step": [ "0 in", "1 7/8 in", "0 in" ] } }
            """;
        var piece = Made.Piece(
            $$"""
            {
              "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Slats",
              "dimensions": [
                { "name": "width", "value": "20" }, { "name": "depth", "value": "3750" }, { "name": "height", "value": "3/4" }
              ],
              "materials": [ { "role": "slat", "name": "Pine 1x2", "form": "board", "thickness": "3/4", "width": "1 1/2" } ],
              "frame": { "kind": "none" }, "parts": [ {{part}} ]
            }
            """
        );
        var area = Assert.Single(FinishPlanner.Of(piece, Finished.Usual).Amounts!.Areas);
        var slat = FinishFaces.All.Of(Length.FromInches(20), Length.FromInches(1.5m), Length.FromInches(0.75m));
        Assert.Equal(slat * 2000, area.Area);
    }

    // Each built-in size, then random ones with random choices.
    private static IEnumerable<(Piece Piece, WorkChoices Choices)> Cases(string name)
    {
        var (document, chance) = (DesignFiles.Read(name), new Random(20261206));
        var standing = DesignEvaluator.Evaluate(document, new Dictionary<string, string>()).Piece!;
        foreach (var finish in FinishChoices.All)
            yield return (standing, Finished.Usual with { Finish = finish.Id });
        foreach (var values in DesignValues.Of(document, Trials, 20261207).TakeLast(Trials))
            yield return (DesignEvaluator.Evaluate(document, values).Piece!, Chosen(chance));
    }

    private static WorkChoices Chosen(Random chance)
    {
        string[] words =
        [
            "primer",
            "paint",
            "enamel",
            "stain",
            "clear",
            "polyurethane",
            "wiping-varnish",
            "shellac",
            "oil",
            "wax",
        ];
        return new()
        {
            Finish = string.Join("+", Enumerable.Range(0, chance.Next(1, 4)).Select(_ => words[chance.Next(words.Length)])),
            Coats = chance.Next(3) == 0 ? null : chance.Next(1, 11),
            StartGrit = chance.Next(3) == 0 ? 80 : chance.Next(36, 200),
            EndGrit = chance.Next(2) == 0 ? null : chance.Next(100, 400),
            HingesBefore = chance.Next(2) == 0,
            PanelEdgesBefore = chance.Next(2) == 0,
            Edges = chance.Next(2) == 0 ? null : FinishChoices.Edges[chance.Next(3)].Id,
            Uses = chance.Next(2) == 0 ? null : [.. Enum.GetValues<FinishUse>().Where(_ => chance.Next(2) == 0)],
            Hours = chance.Next(2) == 0 ? WorkChoices.Usual.Hours : WorkChoices.Usual.Hours.Add("recoat", chance.Next(1, 48)),
        };
    }

    private static bool Handled(IEnumerable<WorkStep> steps, HashSet<string> marks) =>
        steps.SelectMany(step => step.Handles).Any(marks.Contains);

    private static HashSet<string> Ids(Piece piece) =>
        [.. FinishPlanner.Of(piece, Finished.Usual with { Finish = "stain+clear" }).Steps.Select(step => step.Id)];

    private static string Told(FinishPlan plan) =>
        string.Join(
            "\n",
            plan.Steps.Select(step =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{step.Id} {step.Title} {string.Join(' ', step.Says)} {string.Join(' ', step.Handles)} "
                            + $"{step.Minutes} {step.Wait}"
                    )
                )
                .Concat(plan.Findings.Select(finding => finding.Text))
                .Concat(plan.Amounts?.Buy.Select(item => item.ToString()) ?? [])
                .Concat(plan.Amounts?.Areas.Select(area => area.ToString()) ?? [])
        );

    private static IEnumerable<string> Texts(FinishPlan plan) =>
        plan
            .Steps.SelectMany(step => step.Says.Append(step.Title).Append(step.Wait?.What ?? "").Append(step.Tool ?? ""))
            .Concat(plan.Findings.Select(finding => finding.Text));

    private static HashSet<string> Known(WorkChoices choices, Piece piece)
    {
        var numbers = Grits
            .Ladder.Append(choices.StartGrit)
            .Append(choices.EndGrit ?? 0)
            .Append(Grits.Coarsest)
            .Append(Grits.Finest);
        var rubbed = Coats.Products.Select(product => product.BetweenGrit ?? 0);
        var figures = FinishFigures.All.SelectMany(figure =>
            Figures().Matches(figure.Figure.Text(piece.Unit)).Select(match => match.Value)
        );
        // Names of materials hold their sizes.
        var materials = piece.Parts.SelectMany(part => Figures().Matches(part.Material.Name).Select(match => match.Value));
        return
        [
            .. numbers.Concat(rubbed).Append(choices.Coats ?? 0).Select(number => number.ToString(CultureInfo.InvariantCulture)),
            .. figures,
            .. materials,
        ];
    }

    [GeneratedRegex(@"\d+(?:[./]\d+)*")]
    private static partial Regex Figures();

    [GeneratedRegex("^finish:[a-z-]+(:[a-z-]+){1,2}$")]
    private static partial Regex IdForm();
}
