using System.ComponentModel;
using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using PdfSharp.Pdf.IO;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Tests;

[Collection(nameof(PdfFileTests))]
[CollectionDefinition(nameof(PdfFileTests), DisableParallelization = true)]
public sealed class PdfFileTests
{
    /// <summary>Oracle: US Letter 8.5 × 11 in, A4 210 × 297 mm (open label-template dataset; ISO 216).</summary>
    [Theory]
    [InlineData(PaperSize.Letter, 612, 792)]
    [InlineData(PaperSize.A4, 595.28, 841.89)]
    public void Pages_have_the_size_of_the_paper(PaperSize paper, double width, double height)
    {
        using var document = PdfReader.Open(new MemoryStream(Write(PacketSamples.Cabinet(paper))), PdfDocumentOpenMode.Import);
        Assert.Equal(PacketWriter.Pages(PacketSamples.Cabinet(paper)).Length, document.PageCount);
        Assert.All(
            Enumerable.Range(0, document.PageCount).Select(i => document.Pages[i]),
            page =>
            {
                Assert.Equal(width, page.Width.Point, 0.01);
                Assert.Equal(height, page.Height.Point, 0.01);
            }
        );
        Assert.Equal("Hall cabinet", document.Info.Title);
    }

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public void Outline_and_contents_lead_to_the_pages_of_their_sections(PaperSize paper)
    {
        var model = PrintedPages.Whole(PacketSamples.WithWork(paper));
        using var read = new ReadBack(Write(model));
        var pages = PacketWriter.Pages(model);
        var marks = pages.SelectMany((page, i) => page.Bookmarks.Select(mark => (mark.Title, Page: i + 1))).ToList();
        Assert.Equal(marks.Order(), read.Outline.Order());
        Assert.All(
            pages,
            page =>
                Assert.All(
                    page.Bookmarks.Where(one => !one.IsWithin),
                    one => Assert.Contains(one.Title, PrintedPages.Words(page))
                )
        );
        var links = pages.SelectMany(page => page.Links).Select(link => marks.First(mark => mark.Title == link.Target).Page);
        Assert.NotEmpty(links);
        Assert.Equal(links, read.Pages.SelectMany(ReadBack.Links));
    }

    [Fact]
    public void It_says_what_it_is_and_names_nobody()
    {
        using var read = new ReadBack(Write(PacketSamples.Cabinet()));
        Assert.Equal(("Hall cabinet", "Packet of cut plan 3, 8f3a12bc", ""), (read.Title, read.Subject, read.Author));
    }

    /// <summary>The mark of a page's content in a tagged file: ISO 32000-1, 14.7.</summary>
    [Fact]
    public void It_is_tagged_for_readers_that_speak()
    {
        var text = Encoding.Latin1.GetString(Write(PacketSamples.Cabinet()));
        Assert.Contains("/StructTreeRoot", text, StringComparison.Ordinal);
        Assert.Contains("/Marked true", text, StringComparison.Ordinal);
        Assert.Contains("/Lang", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("many")]
    [InlineData("pieces")]
    [InlineData("work")]
    [InlineData("work-a4")]
    public void In_the_file_nothing_comes_near_the_edge_and_no_page_within_is_half_empty(string sample)
    {
        using var read = new ReadBack(Write(PrintedPages.Model(sample)));
        Assert.All(read.Pages, page => Assert.True(ReadBack.IsWithin(page, 18), $"page {page.Number}"));
        Assert.All(
            read.Pages.SkipLast(1),
            page => Assert.True(ReadBack.Emptiness(page) <= 0.4, $"page {page.Number}: {ReadBack.Emptiness(page):0.00} free")
        );
    }

    /// <summary>Oracle: the file's own geometry, read by another library.</summary>
    [Fact]
    public void A_sheet_of_eight_feet_is_as_long_as_its_scale_says()
    {
        var model = PacketSamples.Cabinet() with { Sections = [PacketSection.Layouts] };
        model = model with { Layouts = [model.Layouts[0]] };
        using var read = new ReadBack(Write(model));
        var words = PrintedPages.Words(PacketWriter.Pages(model)[0]);
        var scale = words.First(w => w.StartsWith("scale 1 : ", StringComparison.Ordinal)).Split(' ', ',')[3];
        Assert.Equal(96 * 72.0 / int.Parse(scale), ReadBack.WidestFilled(read.Pages[0]), 0.5);
    }

    [Fact]
    public void Every_mark_stands_on_the_list_and_on_a_layout()
    {
        var model = PacketSamples.Cabinet();
        using var list = new ReadBack(Write(model with { Sections = [PacketSection.CutList] }));
        using var layouts = new ReadBack(Write(model with { Sections = [PacketSection.Layouts] }));
        Assert.All(model.Parts, part => Assert.Contains(part.Marks[0], list.Text(), StringComparison.Ordinal));
        Assert.All(
            model.Layouts.SelectMany(layout => layout.Picture.Pieces),
            piece => Assert.True(Shows(layouts.Text(), piece.Mark), piece.Mark)
        );
    }

    // By itself, or within a range: E1–E5.
    private static bool Shows(string text, string mark) =>
        text.Contains(mark, StringComparison.Ordinal)
        || Regex
            .Matches(text, "([A-Z]+)([0-9]+)–[A-Z]*([0-9]+)")
            .Any(range =>
                mark.StartsWith(range.Groups[1].Value, StringComparison.Ordinal)
                && int.TryParse(mark[range.Groups[1].Length..], out var number)
                && number >= Number(range, 2)
                && number <= Number(range, 3)
            );

    private static int Number(Match range, int group) =>
        int.Parse(range.Groups[group].Value, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Hebrew, Arabic and Chinese need a font of the machine; Greek and Cyrillic are in the typeface.</summary>
    [Theory]
    [InlineData("Ράφι", false)]
    [InlineData("Полка", false)]
    [InlineData("ארון", true)]
    [InlineData("木架", true)]
    public void Names_in_other_scripts_are_printed_as_letters(string name, bool isElsewhere)
    {
        Assert.SkipWhen(
            isElsewhere && name.EnumerateRunes().Any(rune => OtherFonts.For(rune) is null),
            "no freely licensed font with these letters is installed; the Debian packages fonts-dejavu-core and fonts-droid-fallback have them"
        );
        using var read = new ReadBack(Write(PacketSamples.Cabinet() with { Projects = [name] }));
        var letters = string.Concat(read.Pages[0].Letters.Select(letter => letter.Value));
        Assert.Contains(string.Concat(WritingOrder.Visual(name)), letters, StringComparison.Ordinal);
    }

    [Fact]
    public void Same_model_gives_the_same_bytes() => Assert.Equal(Write(PacketSamples.Cabinet()), Write(PacketSamples.Cabinet()));

    [Fact]
    public void Another_plan_gives_another_identity()
    {
        var other = PacketSamples.Cabinet() with { Plan = new(3, "8f3a12bd", null) };
        Assert.NotEqual(Identity(PacketSamples.Cabinet()), Identity(other));
    }

    [Fact]
    public void Fonts_are_embedded_and_nothing_is_a_picture()
    {
        var text = Encoding.Latin1.GetString(Write(PacketSamples.Cabinet()));
        Assert.Contains("/FontFile2", text, StringComparison.Ordinal);
        Assert.DoesNotContain("/Subtype/Image", text, StringComparison.Ordinal);
    }

    /// <summary>Counted in this process's own time, so that a busy machine does not fail it; nothing else runs beside
    /// it.</summary>
    [Fact]
    public void Two_hundred_layouts_take_less_than_five_seconds()
    {
        Write(PacketSamples.Cabinet());
        using var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        var file = Write(PacketSamples.Many(200));
        process.Refresh();
        Assert.InRange((process.TotalProcessorTime - before).TotalSeconds, 0, 5);
        Assert.InRange(file.Length, 10_000, 5_000_000);
    }

    [Fact]
    public async Task Stream_stays_open_and_may_be_one_that_cannot_seek()
    {
        var path = Path.GetTempFileName();
        await using (var stream = new FileStream(path, FileMode.Create))
        {
            PacketWriter.Write(PacketSamples.Cabinet(), stream);
            Assert.True(stream.CanWrite);
        }

        Assert.Equal(
            "%PDF-",
            Encoding.ASCII.GetString(await File.ReadAllBytesAsync(path, TestContext.Current.CancellationToken), 0, 5)
        );
        File.Delete(path);
    }

    /// <summary>Oracle: another PDF reader, pdftotext of poppler-utils, finds the words and figures.</summary>
    [Fact]
    public async Task Another_reader_finds_the_words()
    {
        var path = Path.GetTempFileName();
        await File.WriteAllBytesAsync(path, Write(PacketSamples.Cabinet()), TestContext.Current.CancellationToken);
        var text = await PdfToText(path);
        File.Delete(path);
        Assert.SkipWhen(text is null, "pdftotext is not installed; the Debian package poppler-utils has it");
        string[] wanted = ["Hall cabinet", "Birch plywood 3/4", "$119.20", "34 ½", "page 1 of", "²³⁄₃₂"];
        Assert.All(wanted, word => Assert.Contains(word, text, StringComparison.Ordinal));
    }

    private static async Task<string?> PdfToText(string path)
    {
        try
        {
            using var process = Process.Start(
                new ProcessStartInfo("pdftotext", ["-layout", path, "-"]) { RedirectStandardOutput = true }
            )!;
            var text = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            return text;
        }
        catch (Win32Exception)
        {
            return null;
        }
    }

    private static string Identity(PacketModel model)
    {
        var text = Encoding.Latin1.GetString(Write(model));
        return text[text.LastIndexOf("/ID", StringComparison.Ordinal)..];
    }

    private static byte[] Write(PacketModel model)
    {
        using var stream = new MemoryStream();
        PacketWriter.Write(model, stream);
        return stream.ToArray();
    }
}
