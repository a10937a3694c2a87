using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Model;
using static ShopPlanner.Packets.Tests.PrintedPages;

namespace ShopPlanner.Packets.Tests;

/// <summary>What the printed packet says.</summary>
public sealed class PacketWordsTests
{
    [Fact]
    public void Costs_add_up_and_an_unknown_price_is_told()
    {
        var words = Pages("letter").SelectMany(Words).ToList();
        Assert.All(["$19.44", "$83.44", "$35.76", "Total at all stores: $119.20"], w => Assert.Contains(w, words));
        Assert.Contains("A dash means that no price is known. The total leaves it out.", words);
    }

    [Fact]
    public void Small_pieces_are_named_among_the_cautions()
    {
        var words = string.Join(' ', Pages("letter").SelectMany(Words));
        Assert.Contains("Small pieces: D1–D4. Pieces shorter than 12″ or ripped narrower", words, StringComparison.Ordinal);
        Assert.Contains("follow the manual", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Cuts_of_the_store_stand_in_a_list_of_their_own_and_apart_from_those_at_home()
    {
        var words = Pages("letter").SelectMany(Words).ToList();
        Assert.Contains("Cuts at the store: Store by the highway", words);
        Assert.Contains("Up to ⅛″ off is fine.", Running(words), StringComparison.Ordinal);
        Assert.Contains("1a 15 ¾″ × 96″, 1b 32 ⅛″ × 96″", Running(words), StringComparison.Ordinal);
        Assert.Single(words, "At the store");
        Assert.Single(words, "At home");
        Assert.True(words.IndexOf("At the store") < words.IndexOf("At home"));
    }

    [Fact]
    public void Like_cuts_at_one_setting_stand_in_a_list_for_each_material_that_shares_one()
    {
        var words = Pages("letter").SelectMany(Words).ToList();
        Assert.Contains("Cuts by setting: Pine 1x3", words);
        Assert.Contains("2–4: 1; 5: 1", Running(words), StringComparison.Ordinal);
        Assert.DoesNotContain(words, w => w == "Cuts by setting: Birch plywood 3/4");
    }

    [Fact]
    public void Without_cuts_of_a_store_nothing_is_said_of_it()
    {
        var model = PacketSamples.Cabinet();
        model = model with
        {
            Layouts = [.. model.Layouts.Select(l => l with { Cuts = [.. l.Cuts.Select(c => c with { ByStore = false })] })],
        };
        var words = PacketWriter.Pages(model).SelectMany(Words).ToList();
        Assert.Contains("Cuts at the store: this plan has none", words);
        Assert.DoesNotContain(
            words,
            w => w is "At the store" or "At home" || w.StartsWith("Please cut", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_part_cut_long_says_to_what_it_is_trimmed_and_practice_pieces_are_no_parts()
    {
        var words = Pages("letter").SelectMany(Words).ToList();
        Assert.Contains("Rail: cut 34 ½″ long, trim to 34″ later", Running(words), StringComparison.Ordinal);
        Assert.Contains("Test pieces: pC. Try each new joint setting on them", Running(words), StringComparison.Ordinal);
        Assert.Equal("11", words[words.IndexOf("Parts") + 1]);
    }

    [Fact]
    public void A_piece_is_shown_before_the_cut_list_and_its_joints_after()
    {
        var model = Whole(PacketSamples.WithPieces(PaperSize.Letter));
        var words = PacketWriter.Pages(model).SelectMany(Words).ToList();
        var piece = model.Pieces.Single(one => one.Name == "Bookcase");
        Assert.All(["Front, right side and top", "Apart", "Drawings"], title => Assert.Contains(title, words));
        Assert.True(words.LastIndexOf("Drawings") < words.LastIndexOf("Cut list"));
        Assert.All(piece.Joints, joint => Assert.Contains(joint.Title, Running(words), StringComparison.Ordinal));
    }

    [Fact]
    public void Building_and_finish_come_step_by_step_with_boxes_pictures_and_amounts()
    {
        var model = Whole(PacketSamples.WithWork(PaperSize.Letter));
        var words = PacketWriter.Pages(model).SelectMany(Words).ToList();
        var work = model.Work[0];
        Assert.True(words.LastIndexOf("Cut list") < words.LastIndexOf("Build: " + work.Name));
        Assert.True(words.LastIndexOf("Build: " + work.Name) < words.LastIndexOf("Finish: " + work.Name));
        Assert.All(
            work.Build.Concat(work.Finish),
            step =>
            {
                Assert.Contains($"{step.Number}. {step.Title}", Running(words), StringComparison.Ordinal);
                Assert.All(step.Says, says => Assert.Contains(says, Running(words), StringComparison.Ordinal));
                Assert.All(step.Figures, figure => Assert.Contains(figure, Running(words), StringComparison.Ordinal));
            }
        );
        Assert.All(["Note: Ask Sam to hold it.", "What the finish takes", "Latex paint, 1 qt"], w => Assert.Contains(w, words));
        Assert.Contains(work.Build, step => step.Picture is not null);
    }

    [Fact]
    public void Settings_are_printed_once_with_the_machines_or_else_with_the_steps()
    {
        var model = PacketSamples.WithWork(PaperSize.Letter);
        var figure = model.Work[0].Build.First(step => step.IsOnParts && !step.Figures.IsEmpty).Figures[0];
        int Times(params PacketSection[] sections) =>
            Running(PacketWriter.Pages(model with { Work = [model.Work[0]], Sections = [.. sections] }).SelectMany(Words))
                .Split(figure)
                .Length - 1;
        Assert.NotEqual(0, Times(PacketSection.Steps));
        Assert.Equal(Times(PacketSection.Steps), Times(PacketSection.Machines));
        Assert.Equal(Times(PacketSection.Steps), Times(PacketSection.Steps, PacketSection.Machines));
    }

    [Fact]
    public void Without_a_plan_what_there_is_is_printed_and_the_contents_say_what_is_not()
    {
        var words = Pages("unplanned").SelectMany(Words).ToList();
        Assert.Contains("Boards and sheets with their cuts: no cut plan yet", words);
        Assert.Contains("Cuts at the store: no cut plan yet", words);
        var side = PacketSamples.Unplanned().Pieces[0].Parts[0];
        Assert.Contains(side.Name, words);
    }

    [Fact]
    public void Without_anything_the_contents_say_why()
    {
        var words = Pages("empty").SelectMany(Words).ToList();
        Assert.Contains("Cut list: no parts", words);
        Assert.Contains("Drawings: no design", words);
    }

    [Fact]
    public void The_usual_sections_of_several_pieces_have_the_work_as_a_list()
    {
        Assert.Contains(PacketSection.Steps, PacketSections.Usual(1));
        Assert.DoesNotContain(PacketSection.Order, PacketSections.Usual(1));
        Assert.Contains(PacketSection.Order, PacketSections.Usual(3));
        Assert.DoesNotContain(PacketSection.Steps, PacketSections.Usual(3));
    }

    [Fact]
    public void Sections_are_read_as_they_are_written()
    {
        var some = PacketSections.Usual(1);
        Assert.Equal(some, PacketSections.Read(PacketSections.Write(some), out _)!.Value);
        Assert.Null(PacketSections.Read("cover, glue", out var unknown));
        Assert.Equal("glue", unknown);
    }

    [Fact]
    public void A_working_is_told_once_and_named_by_its_number_after_that()
    {
        var workings = PacketSamples.WithPieces(PaperSize.Letter).Pieces.Single(one => one.Name == "Bookcase").Workings;
        Assert.Equal(Enumerable.Range(1, workings.Length), workings.Select(one => one.Number));
        Assert.All(workings, one => Assert.All(one.From, from => Assert.InRange(from, 1, one.Number - 1)));
        Assert.Equal(workings.Length, workings.Select(one => (one.Name, one.Value, one.How)).Distinct().Count());
    }

    [Fact]
    public void A_caution_is_printed_in_full_once_and_named_by_its_step_after_that()
    {
        var model = PacketSamples.WithWork(PaperSize.Letter);
        var step = model.Work[0].Build[0] with { Cautions = ["Keep the guard on."], Says = ["Cut."], Note = "" };
        var work = model.Work[0] with { Build = [step, step with { Number = 2 }, step with { Number = 3 }] };
        model = model with { Work = [work], Sections = [PacketSection.Steps] };
        var words = PacketWriter.Pages(model).SelectMany(Words).ToList();
        Assert.Single(words, word => word == "Safety: Keep the guard on.");
        Assert.Equal(2, words.Count(word => word == "Safety: as in step 1."));
    }

    [Theory]
    [InlineData("Chest of drawers", "Safety: Until it is anchored to the wall it tips")]
    [InlineData("Bookcase", "Safety: Anchor it to the wall before you load it")]
    [InlineData("Table", "The top grows and shrinks across its width")]
    public void What_the_judge_finds_is_printed_with_its_severity(string name, string found)
    {
        var piece = PacketSamples.WithPieces(PaperSize.Letter).Pieces.Single(one => one.Name == name);
        Assert.Contains(piece.Warnings, warning => warning.Contains(found, StringComparison.Ordinal));
        Assert.DoesNotContain(piece.Warnings, warning => warning.StartsWith("OK", StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_that_is_cut_long_shows_both_sizes()
    {
        var stile = PacketSamples
            .WithPieces(PaperSize.Letter)
            .Pieces.Single(one => one.Name == "Pantry cupboard")
            .Parts.Single(part => part.Name == "Door stile");
        Assert.Equal(ShopPlanner.Drawing.Tests.Samples.In("1/2"), stile.RoughLength - stile.Length);
    }

    [Fact]
    public void Print_of_an_outdated_plan_says_so_on_every_page()
    {
        var model = PacketSamples.Cabinet() with { Plan = new(3, "8f3a12bc", "The price of pine 1x3 has changed.") };
        var pages = PacketWriter.Pages(model);
        Assert.Contains("Out of date. The price of pine 1x3 has changed.", Words(pages[0]));
        Assert.All(pages, p => Assert.Contains("OUT OF DATE", Words(p)));
    }

    [Fact]
    public void The_legend_names_bad_places_where_there_are_any()
    {
        var model = PacketSamples.Cabinet();
        Assert.DoesNotContain("bad place: keep out", Pages("letter").SelectMany(Words));
        var end = new StockArea(default, default, Length.FromInches(2), Length.FromInches(2));
        var spoiled = model.Layouts[0] with { Picture = model.Layouts[0].Picture with { BadPlaces = [end] } };
        var pages = PacketWriter.Pages(model with { Layouts = model.Layouts.SetItem(0, spoiled) });
        Assert.Single(pages.SelectMany(Words), word => word == "bad place: keep out");
        Assert.Contains(pages.SelectMany(p => p.Drawing.Leaves()).OfType<Line>(), line => line.Stroke == Stroke.BadPlace);
    }

    [Fact]
    public void Emoji_are_left_out_and_the_packet_says_so()
    {
        var words = Pages("hostile").SelectMany(Words).ToList();
        Assert.DoesNotContain(words, word => word.Contains("🪚", StringComparison.Ordinal));
        Assert.Contains(words, word => word.StartsWith("Some names have signs that are not printed", StringComparison.Ordinal));
        Assert.DoesNotContain(
            Pages("letter").SelectMany(Words),
            word => word.StartsWith("Some names have signs", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Paper_shows_the_plan_and_not_how_far_it_has_come()
    {
        var primitives = Pages("letter").SelectMany(p => p.Drawing.Leaves()).ToList();
        Assert.DoesNotContain(primitives.OfType<Line>(), l => l.Stroke == Stroke.NextCut);
    }
}
