using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Verification;

/// <summary>Makes the cuts of a layout one by one and looks at what lies on the bench afterwards.</summary>
internal sealed class CutReplay
{
    private readonly Dictionary<string, Box> hand = [];
    private readonly Dictionary<string, string> finished = [];
    private readonly List<Fault> faults = [];
    private readonly LimitCheck limits;
    private readonly long kerf;
    private readonly long skimX;
    private readonly long skimY;
    private readonly Layout layout;
    private readonly PlaceCheck places;
    private readonly string where;

    private CutReplay(CutRequest request, CutStock stock, bool sheet, Layout layout, PlaceCheck places, string where)
    {
        (kerf, this.layout, this.places, this.where) = (request.Saw.Kerf.Ticks, layout, places, where);
        limits = new(request, stock, sheet);
        (skimX, skimY) = (places.SkimX, places.SkimY);
        hand[sheet ? "sheet" : "board"] = new(0, 0, stock.Length.Ticks, stock.Width.Ticks);
    }

    public static IReadOnlyList<Fault> Of(
        CutRequest request,
        CutStock stock,
        bool sheet,
        Layout layout,
        PlaceCheck places,
        string where
    )
    {
        var replay = new CutReplay(request, stock, sheet, layout, places, where);
        for (var i = 0; i < layout.Cuts.Length; i++)
            replay.Make(layout.Cuts[i], i);
        replay.faults.AddRange(replay.limits.AtEnd(layout, where));
        if (replay.faults.Count == 0)
            replay.LookAtBench();
        return replay.faults;
    }

    private void Make(Cut cut, int index)
    {
        var place = $"{where}.cuts[{index}]";
        if (cut.N != index + 1)
            faults.Add(Fault.Of(place, $"{cut.N}", $"is out of order: {index + 1} is next"));
        if (!hand.Remove(cut.Piece, out var piece))
        {
            faults.Add(Fault.Of(place, cut.Piece, "is not in hand"));
            return;
        }

        var across = cut.Kind == CutKind.Crosscut;
        var size = across ? piece.Right - piece.Left : piece.Top - piece.Bottom;
        if (cut.At.Ticks < 0 || cut.At.Ticks >= size)
            faults.Add(Fault.Of(place, $"{cut.At}", "is not on the piece in hand"));
        var first = across ? piece with { Right = piece.Left + cut.At.Ticks } : piece with { Top = piece.Bottom + cut.At.Ticks };
        var rest = Beyond(piece, cut, across);
        faults.AddRange(limits.Cut(cut, piece, first, rest, place));
        Give(cut.First, cut.FirstPart, first, place);
        var remains = rest.Left < rest.Right && rest.Bottom < rest.Top;
        if (remains != cut.Second is not null)
            faults.Add(Fault.Of(place, cut.Second, remains ? "leaves a piece without a name" : "names a piece that is sawdust"));
        if (remains && cut.Second is not null)
            Give(cut.Second, cut.SecondPart, rest, place);
    }

    private Box Beyond(Box piece, Cut cut, bool across)
    {
        var edge = across ? piece.Left : piece.Bottom;
        var off =
            cut.At != Length.Zero
                ? kerf
                : limits.Skim(cut.Kind, edge)
                    ?? (
                        edge > 0 ? kerf
                        : across ? skimX
                        : skimY
                    );
        return across ? piece with { Left = edge + cut.At.Ticks + off } : piece with { Bottom = edge + cut.At.Ticks + off };
    }

    private void Give(string name, string? part, Box box, string place)
    {
        if (!hand.TryAdd(name, box))
            faults.Add(Fault.Of(place, name, "is a name given before"));
        if (part is not null)
            finished[name] = part;
    }

    private void LookAtBench()
    {
        var names = hand.GroupBy(pair => pair.Value, pair => pair.Key).ToDictionary(group => group.Key, group => group.First());
        foreach (var piece in layout.Pieces)
        {
            var name = names.GetValueOrDefault(Box.Of(piece));
            if (name is null)
                faults.Add(Fault.Of(where, piece.Part, "is not cut free by the list of cuts"));
            else if (layout.Cuts.Length > 0 && finished.GetValueOrDefault(name) != piece.Part)
                faults.Add(Fault.Of(where, piece.Part, $"is not named as what cut {name} finishes"));
        }

        foreach (var left in layout.Leftovers.Where(left => left.Keep).Select(Box.Of))
        {
            var whole = hand.Values.Where(box => box.Contains(left)).ToList();
            if (whole.Count == 0)
                faults.Add(Fault.Of(where, layout.Stock, "has a leftover to keep that the list of cuts cuts through"));
            else if (whole.Exists(places.IsBad))
                faults.Add(Fault.Of(where, layout.Stock, "has a leftover to keep that stays on a bad place"));
        }

        if (finished.Count > layout.Pieces.Length)
            faults.Add(Fault.Of(where, layout.Stock, "finishes more parts by its cuts than it has pieces"));
    }
}
