using System.Collections.Immutable;
using System.Text;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs.Bad;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;

namespace ShopPlanner.Services.Tests.Designs;

/// <summary>A file that is imported is judged as on the command line: the same documents are taken, and the same places
/// named.</summary>
public sealed class BadDesignImportTests
{
    [Fact]
    public async Task What_the_command_line_refuses_is_refused_with_the_same_faults_and_nothing_else_is()
    {
        await using var shop = await TestShop.OpenAsync();
        var designs = shop.Get<IDesignService>();
        foreach (var bad in BadDesigns.All)
        {
            var json = Encoding.UTF8.GetBytes(bad.Text);
            var imported = await designs.ImportAsync(json, CommandId.New(), TestShop.Cancel);
            Assert.Equal(OutcomeKind.Faulty, imported.Kind);
            Assert.Equal(Faults(json), imported.Faults);
        }

        Assert.Equal(0, shop.CountRows()["OwnDesigns"]);
        foreach (var good in BadDesigns.Good.Values)
            Assert.True((await designs.ImportAsync(Encoding.UTF8.GetBytes(good), CommandId.New(), TestShop.Cancel)).Ok);
    }

    // As the command reads a file and works it out.
    private static ImmutableArray<Fault> Faults(byte[] json)
    {
        var reading = DesignJson.Read(json);
        return reading.Document is { } document
            ? DesignEvaluator.Evaluate(document, ImmutableDictionary<string, string>.Empty).Faults
            : reading.Faults;
    }
}
