using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Projects;

/// <summary>A written bill becomes rows of a parts list; what is not a part is kept beside it.</summary>
public sealed class BillTakingTests : IAsyncLifetime
{
    private const string Bill = """
        Of oak:
        4 posts, 1-3/4 by 1-3/4 by 30 in., S-4-S
        Front rails, 2 pieces, ¾ x 4 x 22½
        4 hinges
        1 top, by 20 by 40 in.
        """;

    private TestShop shop = null!;
    private ProjectView project = null!;

    private static CancellationToken Cancel => TestShop.Cancel;

    public async ValueTask InitializeAsync()
    {
        shop = await TestShop.OpenAsync();
        project = await Some.ProjectAsync(shop);
    }

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task Every_line_stands_beside_what_was_understood()
    {
        var preview = (await shop.Get<IBillTaking>().PreviewAsync(project.Id, Bill, Cancel)).Value!;
        Assert.Equal([1, 2, 3, 4, 5], preview.Lines.Select(line => line.Line).Distinct());
        Assert.Equal(
            [BillLineKind.Heading, BillLineKind.Part, BillLineKind.Part, BillLineKind.Note],
            preview.Lines.Take(4).Select(line => line.Kind)
        );
        Assert.Contains("4 × ", preview.Lines[1].Understood, StringComparison.Ordinal);
        Assert.Contains("30″ long", preview.Lines[1].Understood, StringComparison.Ordinal);
        Assert.Equal(0, (await shop.Projects.GetAsync(project.Id, Cancel))!.PartKinds);
    }

    [Fact]
    public async Task Parts_come_in_as_one_step_and_hardware_into_the_note()
    {
        var preview = (await shop.Get<IBillTaking>().PreviewAsync(project.Id, Bill, Cancel)).Value!;
        var sheet = (await shop.Get<IBillTaking>().AddBillAsync(project.Id, Bill, CommandId.New(), Cancel)).Value!;
        Assert.Equal(preview.Parts, sheet.Rows.Length);
        var posts = sheet.Rows[0].Texts;
        Assert.Equal(("30", "1 3/4", "4"), (posts.Length, posts.Width, posts.Quantity));
        Assert.Contains("oak", posts.Material, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(("22 1/2", "4", "2"), (sheet.Rows[1].Texts.Length, sheet.Rows[1].Texts.Width, sheet.Rows[1].Texts.Quantity));
        Assert.Contains("4 hinges", (await shop.Projects.GetAsync(project.Id, Cancel))!.Note, StringComparison.Ordinal);
        Assert.Empty((await shop.Parts.UndoAsync(project.Id, Cancel)).Value!.Rows);
    }

    [Fact]
    public async Task A_doubt_stays_with_its_row_and_what_is_not_told_stays_blank()
    {
        const string Doubtful = "2 sides, 3/4 x 10 x 30\n2 shelves, 3/4 x 10 x 28\nback, 1/4 x 28\n";
        var preview = (await shop.Get<IBillTaking>().PreviewAsync(project.Id, Doubtful, Cancel)).Value!;
        Assert.True(preview.Doubtful > 0);
        var sheet = (await shop.Get<IBillTaking>().AddBillAsync(project.Id, Doubtful, CommandId.New(), Cancel)).Value!;
        Assert.Contains(sheet.Rows, row => row.Texts.Note.Contains("Check: ", StringComparison.Ordinal));
        Assert.Equal("", sheet.Rows[^1].Texts.Material);
    }

    [Fact]
    public async Task In_a_metric_project_inches_keep_their_size()
    {
        var metric = (await shop.Projects.CreateAsync("Metric", LengthUnit.Millimetre, CommandId.New(), Cancel)).Value!;
        var sheet = (await shop.Get<IBillTaking>().AddBillAsync(metric.Id, Bill, CommandId.New(), Cancel)).Value!;
        Assert.Equal("762", sheet.Rows[0].Texts.Length);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Once upon a time there was a table.")]
    [InlineData("\u0000\u0001")]
    public async Task What_is_no_bill_is_refused_and_changes_nothing(string text)
    {
        var rows = shop.CountRows();
        var outcome = await shop.Get<IBillTaking>().AddBillAsync(project.Id, text, CommandId.New(), Cancel);
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Equal("bill", outcome.Faults[0].Field);
        Assert.Equal(rows, shop.CountRows());
    }

    [Fact]
    public async Task A_name_of_three_hundred_characters_emoji_and_a_note_that_is_full_harm_nothing()
    {
        var (long1, bills) = (new string('x', 400), shop.Get<IBillTaking>());
        var taken = await bills.AddBillAsync(
            project.Id,
            $"4 {long1}, 2 by 2 by 30 in.\n2 👍 שולחן rails, 1 by 2 by 20 in.",
            CommandId.New(),
            Cancel
        );
        Assert.True(taken.Ok, string.Join("; ", taken.Faults));
        Assert.Equal(2, taken.Value.Rows.Length);
        var now = (await shop.Projects.GetAsync(project.Id, Cancel))!;
        Assert.True((await shop.Projects.SaveAsync(now with { Note = new string('n', 1_995) }, Cancel)).Ok);
        var (rows, full) = (shop.CountRows(), await bills.AddBillAsync(project.Id, Bill, CommandId.New(), Cancel));
        Assert.Contains("doesn't fit", full.Faults[0].Message, StringComparison.Ordinal);
        Assert.Equal(rows, shop.CountRows());
    }
}
