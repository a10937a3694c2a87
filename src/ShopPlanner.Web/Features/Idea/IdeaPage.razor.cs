using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Web.Fields;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>A project's idea: sizes, materials, frame and bays on one side, the drawing and the parts on the other.</summary>
public sealed partial class IdeaPage : IAsyncDisposable
{
    private ProjectView? project;
    private IdeaDraft? draft;
    private IdeaSaving? saving;
    private ShopReach reach = new(
        ImmutableDictionary<string, Core.Designs.Judging.LargestStock>.Empty,
        ImmutableDictionary<string, decimal>.Empty,
        ImmutableDictionary<string, decimal>.Empty
    );
    private IReadOnlyList<MaterialView> materials = [];
    private ImmutableArray<Fault> clashes = [];
    private PartsUpdate? update;
    private Piece? kept;
    private string sign = "";
    private bool isAsking;
    private bool isUpdating;

    [Inject]
    private IProjectService Projects { get; set; } = default!;

    [Inject]
    private IIdeaService Ideas { get; set; } = default!;

    [Inject]
    private IPieceService Pieces { get; set; } = default!;

    [Inject]
    private IMaterialService MaterialList { get; set; } = default!;

    [Inject]
    private IPartService Parts { get; set; } = default!;

    [Inject]
    private IShopService Shop { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private Notices Notices { get; set; } = default!;

    /// <summary>The project.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The view.</summary>
    [SupplyParameterFromQuery(Name = "view")]
    public string? View { get; set; }

    /// <summary>Letter of the chosen part.</summary>
    [SupplyParameterFromQuery(Name = "part")]
    public string? Part { get; set; }

    private PieceView Looking => PieceView.Of(View);

    /// <inheritdoc />
    protected override async Task OnParametersSetAsync()
    {
        if (project?.Id != Id)
            await LoadAsync();
    }

    private async Task LoadAsync()
    {
        if (project is not null && project.Id != Id)
            await CloseAsync();
        project = await Projects.GetAsync(Id);
        if (project is null)
        {
            Navigation.NotFound();
            return;
        }

        self ??= DotNetObjectReference.Create(this);
        (materials, reach, sign) = (
            await MaterialList.ListAsync(),
            await Pieces.ReachAsync(),
            (await Shop.GetAsync()).CurrencySign
        );
        if (saving is not null || await Ideas.GetAsync(Id) is not { } stored)
            return;
        draft = new IdeaDraft(stored.Idea, reach);
        update = await Ideas.CompareAsync(Id);
        saving = new IdeaSaving(Ideas, stored, draft) { Refused = Notices.SayWrong, Changed = () => Hear(CompareAsync) };
    }

    // Another project's page in the same place.
    private async Task CloseAsync()
    {
        if (saving is not null)
            await saving.NowAsync();
        (saving, draft, update, kept, clashes) = (null, null, null, null, []);
        (isUpdating, isAttached, isBayChosen) = (false, false, false);
    }

    private async Task CompareAsync()
    {
        update = await Ideas.CompareAsync(Id);
        StateHasChanged();
    }

    private async Task TypeAsync((DesignDimension Dimension, string Text) typed)
    {
        draft!.Set(typed.Dimension.Name, typed.Text);
        Tell(await SaveSoonAsync(Title(typed.Dimension)));
    }

    private Task TypeInAsync((DesignDimension Dimension, FieldChange Change) typed) =>
        SetAsync(typed.Dimension, typed.Change.Value, typed.Change);

    // The browser sends the slider's step; what is stored is the text that stands for it.
    private Task SlideAsync((DimensionRange Range, FieldChange Change) slid) =>
        long.TryParse(slid.Change.Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var step)
            ? SetAsync(slid.Range.Dimension, new SliderScale(slid.Range, draft!.Document.Unit).Text(step), slid.Change)
            : slid.Change.RefuseAsync();

    private Task SetAsync(DesignDimension dimension, string text, FieldChange change)
    {
        draft!.Set(dimension.Name, text);
        return StoreAsync(Title(dimension), change);
    }

    private async Task ChangeAsync(IdeaChange change)
    {
        draft!.Change(change.With(draft.Document));
        if (change.Field is { } field)
            await StoreAsync(change.What, field);
        else
            Tell(await SaveSoonAsync(change.What));
    }

    // The picture first, the save when the hand rests.
    private Task<FieldAnswer> SaveSoonAsync(string what)
    {
        StateHasChanged();
        return saving!.SoonAsync(what);
    }

    private async Task StoreAsync(string what, FieldChange change) => change.Answer = await SaveSoonAsync(what);

    private Task UndoAsync() => StepAsync(saving!.UndoAsync());

    private Task RedoAsync() => StepAsync(saving!.RedoAsync());

    private async Task StepAsync(Task<FieldAnswer?> step)
    {
        Tell(await step);
        await CompareAsync();
    }

    // A field shows both texts itself; a button has no place for that.
    private void Tell(FieldAnswer? answer)
    {
        if (answer == FieldAnswer.Conflict)
            Notices.SayWrong([Fault.Of("", "", "another device changed this design. Its changes are shown: make yours again")]);
    }

    private async Task MakeAsync(bool mayLetter, CommandPress press)
    {
        await saving!.NowAsync();
        var outcome = await Ideas.MakePartsAsync(Id, mayLetter, press.Id);
        press.IsDone = outcome.Ok;
        clashes = outcome.Ok ? [] : [.. outcome.Faults.Where(fault => fault.Field == "marks")];
        update = await Ideas.CompareAsync(Id);
        isUpdating = isUpdating && !outcome.Ok;
        if (outcome.Value is { } made)
            Tell(made);
        else if (clashes.IsEmpty)
            Notices.SayWrong(outcome.Faults);
    }

    private void Tell(MadeParts made)
    {
        var letters = made.Lettered.IsEmpty
            ? ""
            : " Your own rows: " + string.Join(", ", made.Lettered.Select(one => $"{one.From} is now {one.To}")) + ".";
        if (made.Step is { } step)
            Notices.SayWithUndo(
                $"{Words.Count(made.Rows, "part")} on the parts list.{letters}",
                () => InvokeAsync(() => TakeBackAsync(step))
            );
        else
            Notices.Say("The parts list is already up to date.");
    }

    private async Task TakeBackAsync(Guid step)
    {
        var outcome = await Parts.UndoAsync(Id, step);
        if (!outcome.Ok)
            Notices.SayWrong(outcome.Faults);
        await CompareAsync();
    }

    private async Task AskBinAsync(DimensionRange count)
    {
        isAsking = true;
        StateHasChanged();
        var outcome = await Pieces.AsManyAsBinAllowsAsync(draft!.Idea, count);
        isAsking = false;
        if (outcome.Value is not { } answer)
            Notices.SayWrong(outcome.Faults);
        else if (answer.Count is { } many)
            await TakeAsync(count, many, answer);
        else
            Notices.Say($"The bin doesn't have enough for even the smallest count: {Names(answer)}.");
    }

    private Task TakeAsync(DimensionRange count, int many, BinAllows answer)
    {
        Notices.Say($"The bin has enough for {many}: {Names(answer)}.");
        return TypeAsync((count.Dimension, many.ToString(CultureInfo.InvariantCulture)));
    }

    private static string Names(BinAllows answer) => string.Join(", ", answer.Parts).ToLowerInvariant();

    private static string Title(DesignDimension dimension) => dimension.Label.ToLowerInvariant();

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        var leaving = script.DisposeAsync();
        if (saving is not null)
            await saving.NowAsync();
        self?.Dispose();
        await leaving;
    }
}
