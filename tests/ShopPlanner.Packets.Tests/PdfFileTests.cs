using System.ComponentModel;
using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using PdfSharp.Pdf.Content;
using PdfSharp.Pdf.Content.Objects;
using PdfSharp.Pdf.IO;
using ShopPlanner.Drawing.Shapes;
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

    /// <summary>In the file a line is moved to, drawn and stroked: nothing is joined that was not joined on the page.</summary>
    [Fact]
    public void Every_line_is_a_line_of_its_own()
    {
        using var document = PdfReader.Open(new MemoryStream(Write(PacketSamples.Cabinet())), PdfDocumentOpenMode.Import);
        var pages = PacketWriter.Pages(PacketSamples.Cabinet());
        for (var i = 0; i < pages.Length; i++)
        {
            var operators = string.Join(
                ' ',
                ContentReader.ReadContent(document.Pages[i]).OfType<COperator>().Select(o => o.Name)
            );
            Assert.Equal(pages[i].Drawing.Leaves().OfType<Line>().Count(), Regex.Count(operators, "(?<=^| )m l S(?= |$)"));
        }
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
        string[] wanted = ["Hall cabinet", "Birch plywood 3/4", "$119.20", "34 ½", "scale 1 : 14", "page 1 of 5", "²³⁄₃₂"];
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
