using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Commands;

/// <summary>What a making command was answered with.</summary>
/// <param name="Kind">How it ended.</param>
/// <param name="Value">What was made, as text; empty where nothing was.</param>
/// <param name="Faults">Why not.</param>
public sealed record Answer(OutcomeKind Kind, string Value, string Faults)
{
    internal static async Task<Answer> OfAsync<T>(Task<Outcome<T>> asked, Func<T, string> say)
        where T : class
    {
        var outcome = await asked;
        return new(outcome.Kind, outcome.Ok ? say(outcome.Value) : "", string.Join<Fault>("; ", outcome.Faults));
    }
}

/// <summary>Sends a command that was prepared in a shop; the shop may have been closed and opened since.</summary>
internal delegate Task<Answer> SendCommand(TestShop shop, CommandId command);

/// <summary>A method that makes something.</summary>
/// <param name="Method">Interface and name.</param>
/// <param name="PrepareAsync">Puts what it needs into a shop.</param>
internal sealed record MakingCase(string Method, Func<PlannedShop, Task<SendCommand>> PrepareAsync);
