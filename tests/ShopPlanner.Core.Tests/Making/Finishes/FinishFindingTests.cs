using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Tests.Designs;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Making.Finishes;

/// <summary>What a material or a use does not take is said, with what would be right.</summary>
public sealed class FinishFindingTests
{
    [Theory]
    [InlineData("wax+paint", "doesn't hold on wax")]
    [InlineData("wax+clear", "doesn't hold on wax")]
    [InlineData("clear+stain", "can't sink in")]
    [InlineData("paint+stain", "can't sink in")]
    [InlineData("polyurethane+oil", "needs bare wood")]
    [InlineData("shellac+hard-wax-oil", "needs bare wood")]
    [InlineData("clear+primer", "goes on bare wood")]
    [InlineData("paint+paint", "more than once")]
    [InlineData("tar", "isn't a finish")]
    [InlineData("", "isn't a finish")]
    public void What_does_not_hold_is_refused_and_only_sanded(string finish, string why)
    {
        var plan = Finished.Listed("Pine 1x12", finish);
        var finding = plan.Findings.First(one => one.Severity == Severity.Fails);
        Assert.Contains(why, finding.Text, StringComparison.Ordinal);
        Assert.Null(plan.Amounts);
        Assert.DoesNotContain(plan.Steps, step => step.Action is WorkAction.Coat or WorkAction.Stain or WorkAction.Prime);
        Assert.True(plan.Has("parts:sand"));
    }

    [Theory]
    [InlineData("oil+clear")]
    [InlineData("polyurethane+clear")]
    public void Water_based_over_fresh_oil_waits(string finish)
    {
        var plan = Finished.Listed("Red oak 1x6", finish);
        Assert.Contains(plan.Findings, one => one.Text.Contains("lets go of fresh", StringComparison.Ordinal));
        var last = plan.Steps.Last(step => step.Id.StartsWith("finish:piece:" + finish.Split('+')[0], StringComparison.Ordinal));
        Assert.Equal(72 * 60, last.Wait!.Minutes);
    }

    // The usual finishes keep stain and water apart by shellac.
    [Fact]
    public void Every_usual_finish_holds_on_pine()
    {
        foreach (var finish in FinishChoices.All)
            Assert.DoesNotContain(Finished.Listed("Pine 1x12", finish.Id).Findings, one => one.Severity > Severity.Tip);
    }

    [Theory]
    [InlineData("MDF 3/4 in", true)]
    [InlineData("Particleboard 3/4 in", true)]
    [InlineData("White melamine 3/4 in", true)]
    [InlineData("Birch plywood 3/4 in", false)]
    public void Stain_needs_wood(string material, bool isRefused)
    {
        var plan = Finished.Listed(material, "stain+clear", true);
        Assert.Equal(isRefused, plan.Findings.Any(one => one.Severity == Severity.Fails));
        Assert.Equal(!isRefused, plan.Has("piece:stain"));
    }

    [Fact]
    public void A_plastic_face_is_left_as_it_is()
    {
        var plan = Finished.Listed("White melamine 3/4 in", "paint", true);
        Assert.Contains(plan.Findings, one => one.Text.Contains("takes no finish", StringComparison.Ordinal));
        Assert.Equal(Core.Measures.Area.Zero, plan.Amounts!.Areas[0].Area);
        Assert.False(plan.Has("piece:paint:first"));
        Assert.Empty(plan.Amounts.Buy);
    }

    // Common practice: sandpaper goes through the film of a laminate or of melamine.
    [Theory]
    [InlineData("paint")]
    [InlineData(FinishChoices.None)]
    public void A_plastic_face_is_not_sanded(string finish) =>
        Assert.Empty(Finished.Listed("White melamine 3/4 in", finish, true).Steps);

    [Fact]
    public void Edges_get_what_suits_the_finish()
    {
        Assert.True(Finished.Listed("Birch plywood", "clear", true).Has("parts:band-edges"));
        Assert.False(Finished.Listed("Birch plywood", "clear", true).Has("piece:fill-edges"));
        Assert.True(Finished.Listed("Birch plywood", "paint", true).Has("piece:fill-edges"));
        Assert.False(Finished.Listed("Birch plywood", "paint", true).Has("parts:band-edges"));
        Assert.False(Finished.Listed("Pine 1x12", "clear").Has("parts:band-edges"));
    }

    [Theory]
    [InlineData("Pine 1x12", false, "clear", "iron-on", "peels off")]
    [InlineData("Birch plywood", true, "paint", "iron-on", "shows through paint")]
    [InlineData("Birch plywood", true, "clear", "filler", "smears")]
    [InlineData("Birch plywood", true, "clear", "lace", "isn't a treatment of edges")]
    public void An_edge_that_does_not_suit_is_said(string material, bool isSheet, string finish, string edges, string why) =>
        Assert.Contains(
            Finished.Listed(material, Finished.Usual with { Finish = finish, Edges = edges }, isSheet).Findings,
            one => one.Severity >= Severity.Watch && one.Text.Contains(why, StringComparison.Ordinal)
        );

    [Theory]
    [InlineData("shellac", true)]
    [InlineData("wax", true)]
    [InlineData("clear", true)]
    [InlineData("hard-wax-oil", true)]
    [InlineData("enamel", true)]
    [InlineData("paint", false)]
    [InlineData("oil", false)]
    [InlineData("polyurethane", false)]
    public void Outdoors_only_what_stands_rain(string finish, bool isRefused)
    {
        var plan = Finished.Plan("outdoor-bench", finish);
        Assert.Equal(isRefused, plan.Findings.Any(one => one.Severity == Severity.Fails));
        if (!isRefused)
            Assert.Contains(plan.Amounts!.Buy, item => item.Name.StartsWith("Exterior ", StringComparison.Ordinal));
        Assert.DoesNotContain(
            FinishPlanner.Of(Finished.Piece("outdoor-bench"), Finished.Usual with { Finish = finish, Uses = [] }).Findings,
            one => one.Severity == Severity.Fails
        );
    }

    [Theory]
    [InlineData("toy-chest", "toy-finish", "toys")]
    [InlineData("tray", "food-finish", "food")]
    public void What_children_or_food_touch_defers_to_the_maker(string design, string caution, string word)
    {
        var plan = Finished.Plan(design, "clear");
        Assert.Contains(
            plan.Findings,
            one => one.Severity == Severity.Safety && one.Text.Contains(word, StringComparison.Ordinal)
        );
        Assert.Contains(plan.Step("all:cure").Cautions, one => one.Id == caution);
        Assert.DoesNotContain(Finished.Plan("bookcase", "clear").Step("all:cure").Cautions, one => one.Id == caution);
    }

    [Fact]
    public void Drawer_boxes_get_neither_oil_nor_paint()
    {
        foreach (var finish in FinishChoices.All.Where(one => one.Id != FinishChoices.None))
        {
            var plan = Finished.Plan("drawer-chest", finish.Id);
            var boxes = Finished
                .Piece("drawer-chest")
                .Parts.Where(part => part.Assembly == "Drawer" && part.Name != "Drawer front")
                .SelectMany(part => part.Copies)
                .Select(copy => copy.Mark)
                .ToHashSet();
            Assert.NotEmpty(boxes);
            var oily = plan.Steps.Where(step => step.Cautions.Any(one => one.Id == "oily-rags"));
            Assert.DoesNotContain(oily.SelectMany(step => step.Handles), boxes.Contains);
            Assert.True(plan.Has("drawers:shellac:second") || finish.Id is "clear" or "shellac", finish.Id);
        }
    }

    [Fact]
    public void Hours_of_the_can_come_first()
    {
        var can = Finished.Usual with { Hours = Finished.Usual.Hours.Add("recoat", 6).Add("primer", 1.5).Add("cure", 72) };
        var plan = Finished.Listed("Pine 1x12", can);
        Assert.Equal(6 * 60, plan.Step("piece:paint:first").Wait!.Minutes);
        Assert.Equal(90, plan.Step("piece:prime").Wait!.Minutes);
        Assert.Equal(72 * 60, plan.Step("all:cure").Wait!.Minutes);
        Assert.Equal(FinishSources.Can, plan.Step("piece:prime").Wait!.Source);
        // Wood Handbook ch. 16: a stain-blocking latex primer dries 24 to 48 h.
        Assert.Equal(24 * 60, Finished.Listed("Pine 1x12", "paint").Step("piece:prime").Wait!.Minutes);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e9)]
    public void Hours_that_are_none_are_refused(double hours)
    {
        var plan = Finished.Listed("Pine 1x12", Finished.Usual with { Hours = Finished.Usual.Hours.Add("recoat", hours) });
        Assert.Contains(plan.Findings, one => one.Text.Contains("isn't a wait", StringComparison.Ordinal));
        Assert.Equal(4 * 60, plan.Step("piece:paint:first").Wait!.Minutes);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(11)]
    [InlineData(int.MaxValue)]
    public void Coats_that_are_none_are_refused(int coats)
    {
        var plan = Finished.Listed("Pine 1x12", Finished.Usual with { Coats = coats });
        Assert.Contains(plan.Findings, one => one.Text.Contains("coats can't be planned", StringComparison.Ordinal));
        Assert.True(plan.Has("piece:paint:second"));
    }

    [Fact]
    public void Teak_keeps_a_film_from_holding() =>
        Assert.Contains(Finished.Listed("Teak", "polyurethane").Findings, one => one.Severity == Severity.Watch);

    [Fact]
    public void Without_a_finish_it_is_sanded_and_nothing_is_bought()
    {
        foreach (var design in DesignFiles.Names)
        {
            var plan = Finished.Plan(design, FinishChoices.None);
            Assert.Null(plan.Amounts);
            Assert.Empty(plan.Findings);
            Assert.All(plan.Steps, step => Assert.True(step.Action is WorkAction.Sand or WorkAction.Dust));
        }
    }
}
