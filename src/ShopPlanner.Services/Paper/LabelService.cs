using ShopPlanner.Core.Measures;
using ShopPlanner.Packets.Labels;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Paper;

internal sealed class LabelService(ShopWork work, LabelReading reading, CostlyWork costly, TimeProvider clock) : ILabelService
{
    public async Task<LabelsView?> FindAsync(LabelSource source, CancellationToken cancel = default) =>
        await work.ReadAsync(db => reading.ReadAsync(db, source, cancel), cancel) is { } read
            ? new(read.Title, read.Labels.Count, read.OutOfDate)
            : null;

    public Task<Outcome<PaperFile>> PrintAsync(
        LabelSource source,
        string? only,
        LabelPrint print,
        Func<Guid, string, string>? address,
        CancellationToken cancel = default
    ) => costly.RunAsync(() => WriteAsync(source, only, print, address, cancel), cancel);

    private async Task<Outcome<PaperFile>> WriteAsync(
        LabelSource source,
        string? only,
        LabelPrint print,
        Func<Guid, string, string>? address,
        CancellationToken cancel
    )
    {
        if (await work.ReadAsync(db => reading.ReadAsync(db, source, cancel), cancel) is not { } read)
            return Outcome.Missing<PaperFile>("plan or project");
        var marks = PlacedLabel.Asked(only);
        var asked = read.Labels.Where(label => label.IsAsked(marks)).ToList();
        if (asked.Count == 0)
            return Outcome.Faulty<PaperFile>(
                marks.Length == 0
                    ? Fault.Of("only", "", "leaves nothing to label: there are no parts or offcuts yet")
                    : Fault.Of("only", only, "is no mark here: write marks as on the parts list, with commas between, as A1, C")
            );
        var name = source == LabelSource.Bin ? "Offcuts" : read.Title;
        using var file = new MemoryStream();
        LabelWriter.Write(
            [.. asked.Select(one => Coded(one, address))],
            print,
            $"Labels, {name}",
            DateOnly.FromDateTime(clock.GetLocalNow().DateTime),
            file
        );
        return new PaperFile(name, file.ToArray());
    }

    private static Label Coded(PlacedLabel placed, Func<Guid, string, string>? address) =>
        address is not null && placed.Project is { } project
            ? placed.Label with
            {
                Code = address(project, placed.Own),
            }
            : placed.Label;
}
