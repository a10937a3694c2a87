using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Checking;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Built-in designs at many values: each gives a piece that can be built and used.</summary>
public sealed class DesignCheckTests
{
    private static readonly Dictionary<string, LargestStock> UsualStock = [];

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void A_built_in_design_passes_at_random_and_at_all_corners(string name)
    {
        var order = new CheckOrder(ImmutableDictionary<string, string>.Empty, AtRandom: 300, Corners: true);
        var report = DesignCheck.Run(DesignFiles.Read(name), order, UsualStock);
        Assert.True(report.Tried > 300);
        Assert.Empty(report.Faults);
        Assert.DoesNotContain(report.Findings, finding => finding.Severity == Severity.Fails);
    }

    [Fact]
    public void A_finding_counts_its_sentences_whatever_their_figures()
    {
        var order = new CheckOrder(ImmutableDictionary<string, string>.Empty, AtRandom: 100, Corners: false);
        var report = DesignCheck.Run(DesignFiles.Read("bookcase"), order, UsualStock);
        Assert.All(report.Findings, finding => Assert.InRange(finding.Times, 1, report.Tried));
        Assert.Equal(
            report.Findings.Length,
            report.Findings.Select(one => (one.Severity, one.Part, Plain(one.Text))).Distinct().Count()
        );
    }

    private static string Plain(string text) => string.Concat(text.Where(c => !char.IsDigit(c) && !char.IsNumber(c)));
}
