using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Making.Templates;
using ShopPlanner.Core.Measures;
using ShopPlanner.Packets.Templates;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;
using Printed = ShopPlanner.Packets.Model.PaperSize;

namespace ShopPlanner.Services.Paper;

internal sealed class TemplateService(ShopWork work, CostlyWork costly, TimeProvider clock) : ITemplateService
{
    public Task<TemplatesView?> FindAsync(Guid projectId, Length pull, PaperSize paper, CancellationToken cancel = default) =>
        work.ReadAsync(db => FindAsync(db, projectId, pull, paper, cancel), cancel);

    public Task<Outcome<PaperFile>> PrintAsync(
        Guid projectId,
        IReadOnlyCollection<string> ids,
        Length pull,
        PaperSize paper,
        CancellationToken cancel = default
    ) => costly.RunAsync(() => WriteAsync(projectId, ids, pull, paper, cancel), cancel);

    private async Task<Outcome<PaperFile>> WriteAsync(
        Guid projectId,
        IReadOnlyCollection<string> ids,
        Length pull,
        PaperSize paper,
        CancellationToken cancel
    )
    {
        if (await FindAsync(projectId, pull, paper, cancel) is not { } found)
            return Outcome.Missing<PaperFile>("project");
        ImmutableArray<PartTemplate> templates =
        [
            .. found.Lines.Select(line => line.Template).Where(one => ids.Count == 0 || ids.Contains(one.Id)),
        ];
        if (templates.IsEmpty)
            return Outcome.Missing<PaperFile>("template");
        using var file = new MemoryStream();
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        TemplateWriter.Write(templates, found.Project, On(paper), today, file);
        return new PaperFile(found.Project, file.ToArray());
    }

    private static async Task<TemplatesView?> FindAsync(
        ShopContext db,
        Guid projectId,
        Length pull,
        PaperSize paper,
        CancellationToken cancel
    )
    {
        if (await db.Projects.AsNoTracking().SingleOrDefaultAsync(one => one.Id == projectId, cancel) is not { } project)
            return null;
        var piece = await KnownParts.PieceAsync(db, projectId, cancel);
        return new(
            project.Name,
            project.Unit,
            piece is null
                ? []
                : [.. PartTemplates.Of(piece, pull).Select(one => new TemplateLine(one, TemplateWriter.Sheets(one, On(paper))))],
            piece is not null
        );
    }

    private static Printed On(PaperSize paper) => paper == PaperSize.A4 ? Printed.A4 : Printed.Letter;
}
