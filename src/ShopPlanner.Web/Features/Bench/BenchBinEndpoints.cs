using ShopPlanner.Services.Bench.Bin;
using ShopPlanner.Services.Common;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>What the forms of the bin at the bench do.</summary>
internal static class BenchBinEndpoints
{
    /// <summary>Maps the addresses.</summary>
    public static void MapBenchBin(this IEndpointRouteBuilder routes)
    {
        var commands = routes.MapGroup(Links.BenchBin).DisableAntiforgery().AddEndpointFilter(BenchEndpoints.CheckAsync);
        commands.MapPost("/taken", TakeAsync);
        commands.MapPost("/returned", PutBackAsync);
        commands.MapPost("/measured", MeasureAsync);
        commands.MapPost("/discarded", DiscardAsync);
        commands.MapPost("/undone", UndoAsync);
    }

    private static Task<IResult> TakeAsync(IBinService bin, HttpContext context, CancellationToken cancel)
    {
        var form = new BenchForm(context.Request.Form);
        Guid? project = string.IsNullOrEmpty(form.Text("Project")) ? null : form.Id("Project");
        return RunAsync(
            form,
            (id, version, command) => bin.TakeAsync(id, version, project, DeviceName.Of(context), command, cancel)
        );
    }

    private static Task<IResult> PutBackAsync(IBinService bin, HttpContext context, CancellationToken cancel)
    {
        var form = new BenchForm(context.Request.Form);
        var (length, width) = Size(form);
        return RunAsync(
            form,
            (id, version, command) => bin.PutBackAsync(id, version, length, width, DeviceName.Of(context), command, cancel)
        );
    }

    private static Task<IResult> MeasureAsync(IBinService bin, HttpContext context, CancellationToken cancel)
    {
        var form = new BenchForm(context.Request.Form);
        var (length, width) = Size(form);
        return RunAsync(
            form,
            (id, version, command) => bin.CorrectAsync(id, version, length, width, DeviceName.Of(context), command, cancel)
        );
    }

    private static Task<IResult> DiscardAsync(IBinService bin, HttpContext context, CancellationToken cancel) =>
        RunAsync(
            new BenchForm(context.Request.Form),
            (id, version, command) => bin.DiscardAsync(id, version, DeviceName.Of(context), command, cancel)
        );

    private static async Task<IResult> UndoAsync(IBinService bin, HttpContext context, CancellationToken cancel)
    {
        var form = new BenchForm(context.Request.Form);
        var (command, entry, back) = (form.Id("Command"), form.Id("Entry"), Back(form));
        return form.Faults.IsEmpty
            ? BenchEndpoints.After(await bin.UndoAsync(entry, DeviceName.Of(context), new CommandId(command), cancel), back)
            : BenchEndpoints.Unread(form, back);
    }

    private static async Task<IResult> RunAsync(BenchForm form, Func<Guid, int, CommandId, Task<Outcome<Done>>> act)
    {
        var (command, piece, version, back) = (form.Id("Command"), form.Id("Piece"), form.Number("Version"), Back(form));
        return form.Faults.IsEmpty
            ? BenchEndpoints.After(await act(piece, version, new CommandId(command)), back)
            : BenchEndpoints.Unread(form, back);
    }

    private static (string Length, string Width) Size(BenchForm form)
    {
        var tag = form.Text("Tag") ?? "";
        return (form.Text($"Length-{tag}") ?? "", form.Text($"Width-{tag}") ?? "");
    }

    // Only ever a page of the bin.
    private static string Back(BenchForm form) =>
        form.Text("Back") is { } back
        && (back == Links.BenchBin || back.StartsWith(Links.BenchBin + "?", StringComparison.Ordinal))
            ? back
            : Links.BenchBin;
}
