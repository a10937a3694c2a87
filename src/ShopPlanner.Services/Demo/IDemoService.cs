using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Demo;

/// <summary>The demo: an invented shop to look around in.</summary>
public interface IDemoService
{
    /// <summary>Returns whether the shop has no project, no store and no stock, so that the demo can be loaded.</summary>
    Task<bool> CanLoadAsync(CancellationToken cancel = default);

    /// <summary>Puts the demo into an empty shop; faulty where the shop is in use.</summary>
    Task<Outcome<Done>> LoadAsync(CommandId command, CancellationToken cancel = default);
}
