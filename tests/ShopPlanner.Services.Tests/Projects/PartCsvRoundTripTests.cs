using System.Text;
using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Projects;

/// <summary>Whatever stands on a parts list comes back from its own table.</summary>
public sealed class PartCsvRoundTripTests : IAsyncLifetime
{
    // What tables, spreadsheets and builders trip over.
    private static readonly Gen<string> Text = Gen.OneOf(
            "a",
            "Z",
            "7",
            "1/2",
            ".",
            ",",
            ";",
            "\"",
            "'",
            "=",
            "+",
            "-",
            "@",
            " ",
            "×",
            "½",
            "″",
            "ä",
            "漢",
            "👍"
        )
        .Array[0, 8]
        .Select(parts => string.Concat(parts).Trim());

    private static readonly Gen<string> Lines = Gen.Select(Text, Text).Select((first, second) => $"{first}\n{second}".Trim());

    private static readonly Gen<string> Sizes = Gen.OneOf(
        Text,
        Gen.Int[1, 900].Select(n => $"{n} 3/16"),
        Gen.Int[1, 7].Select(n => $"{n}/8"),
        Gen.Int[1, 900].Select(n => $"{n}.5 mm")
    );

    private static readonly Gen<PartTexts> Rows = Gen.Select(
        Gen.Select(Text, Text, Gen.OneOf(Text, Gen.OneOf(Some.Pine, "Birch plywood 3/4 in", "mdf 3/4"))),
        Gen.Select(Sizes, Sizes, Gen.OneOf(Text, Gen.Int[0, 40].Select(n => $"{n}.0"), Gen.Int[0, 40].Select(n => $"{n}"))),
        Gen.Select(Gen.Bool, Lines),
        Gen.Select(Sizes, Sizes, Text),
        (names, sizes, more, extra) =>
            new PartTexts(
                Guid.CreateVersion7(),
                names.Item1,
                names.Item2,
                names.Item3,
                sizes.Item1,
                sizes.Item2,
                sizes.Item3,
                more.Item1,
                more.Item2
            )
            {
                LongBy = extra.Item1,
                WideBy = extra.Item2,
                Practice = extra.Item3,
            }
    );

    private TestShop shop = null!;

    public async ValueTask InitializeAsync() => shop = await TestShop.OpenAsync();

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public Task Rows_come_back_as_they_were_typed() =>
        Rows.Array[1, 6]
            .SampleAsync(
                async rows =>
                {
                    var (before, after) = await ThereAndBackAsync(rows, LengthUnit.Inch);
                    Assert.Equal(before.Select(Typed), after.Select(Typed));
                    Assert.Equal(before.Select(row => row.Part), after.Select(row => row.Part));
                },
                iter: 60,
                threads: 1
            );

    [Fact]
    public Task Sizes_stay_the_same_in_a_project_of_another_unit() =>
        Rows.Array[1, 6]
            .SampleAsync(
                async rows =>
                {
                    var (before, after) = await ThereAndBackAsync(rows, LengthUnit.Millimetre);
                    Assert.All(
                        before.Zip(after).Where(pair => pair.First.Part is not null),
                        pair => Assert.Equal(pair.First.Part, pair.Second.Part)
                    );
                },
                iter: 60,
                threads: 1
            );

    private async Task<(IReadOnlyList<PartRow> Before, IReadOnlyList<PartRow> After)> ThereAndBackAsync(
        PartTexts[] rows,
        LengthUnit unit
    )
    {
        var (from, to) = (await ProjectAsync(LengthUnit.Inch), await ProjectAsync(unit));
        var saved = await shop.Parts.SaveAsync(from, [.. rows.Select(Renewed).Select(Some.New)], TestShop.Cancel);
        Assert.True(saved.Ok, string.Join("; ", saved.Faults));
        var exchange = shop.Get<IPartExchange>();
        var csv = Encoding.UTF8.GetBytes((await exchange.ExportCsvAsync(from, TestShop.Cancel))!);
        var read = await exchange.ImportCsvAsync(to, csv, CommandId.New(), TestShop.Cancel);
        Assert.True(read.Ok, string.Join("; ", read.Faults));
        return (saved.Value.Rows, read.Value.Rows);
    }

    // A sample may be tried again.
    private static PartTexts Renewed(PartTexts row) => row with { Id = Guid.CreateVersion7() };

    // A material that was typed as an id goes out under its name.
    private static PartTexts Typed(PartRow row) => row.Texts with { Id = Guid.Empty, Material = row.MaterialName };

    private async Task<Guid> ProjectAsync(LengthUnit unit) =>
        (await shop.Projects.CreateAsync("There and back", unit, CommandId.New(), TestShop.Cancel)).Value!.Id;
}
