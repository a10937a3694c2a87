using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using ShopPlanner.Core.Designs;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>What is chosen on the page: a part or a bay, in the drawing, the lists or the map.</summary>
public sealed partial class IdeaPage
{
    private readonly ComponentScript script = new("idea");
    private ElementReference root;
    private DotNetObjectReference<IdeaPage>? self;
    private string bay = DesignEditing.WholeBay;
    private bool isBayChosen;
    private DesignPlace? opening;
    private string? wanted;
    private bool isAttached;

    [Inject]
    private IJSRuntime Js { get; set; } = default!;

    private IReadOnlyList<string> ChosenMarks => draft?.Part(Part) is { } part ? [.. part.Copies.Select(copy => copy.Mark)] : [];

    /// <summary>A part was chosen in the drawing: asked by the script.</summary>
    [JSInvokable]
    public Task Pick(string mark) =>
        HearAsync(() =>
        {
            var part = draft?.PartOf(mark)?.Id;
            wanted = part == Part ? null : part;
            Choose(part);
            return Task.CompletedTask;
        });

    /// <summary>A bay was chosen in the drawing: asked by the script.</summary>
    [JSInvokable]
    public Task PickBay(string path) =>
        HearAsync(() =>
        {
            if (draft?.Document.AllBays().Any(one => one.Path == path) == true)
                ShowBay(path);
            StateHasChanged();
            return Task.CompletedTask;
        });

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (draft is null)
            return;
        if (!isAttached)
        {
            isAttached = true;
            await script.CallAsync(Js, "attach", root, self);
        }

        if (opening is { } place)
        {
            opening = null;
            await script.CallAsync(Js, "show", root, place.Section, place.Key);
        }

        if (wanted is not null && draft.Part(Part)?.Id == wanted)
        {
            wanted = null;
            await script.CallAsync(Js, "reveal", root);
        }
    }

    private void ChooseBay(string path) => (bay, isBayChosen) = (path, true);

    // The bay's own button has the focus then: its fields follow.
    private void ShowBay(string path)
    {
        ChooseBay(path);
        opening = new(BayWords.Name(path), "bays", path, "bay " + path);
    }

    // The bay is chosen first; once it is drawn, the script opens the sections around the field.
    private void OpenPlace(string field)
    {
        opening = DesignPlace.Of(draft!.Document, field);
        bay = opening.Bay ?? bay;
    }

    private void Choose(string? part) => Navigation.NavigateTo(Links.Idea(Id, View, part == Part ? null : part), replace: true);
}
