using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;
using ShopPlanner.Services.Access;

namespace ShopPlanner.Web.Security;

/// <summary>Refuses what a live connection sends once its device was signed out. The page itself leaves at once
/// (<c>LeaveWhenSignedOut</c>); this holds where a browser does not follow.</summary>
internal sealed class CircuitWatch(IAccessService access, AuthenticationStateProvider states) : CircuitHandler
{
    private Guid? device;

    /// <inheritdoc />
    public override async Task OnCircuitOpenedAsync(Circuit circuit, CancellationToken cancellationToken) =>
        device = Caller.Of((await states.GetAuthenticationStateAsync()).User);

    /// <inheritdoc />
    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(
        Func<CircuitInboundActivityContext, Task> next
    ) => context => device is { } id && !access.IsIn(id) ? Task.CompletedTask : next(context);
}
