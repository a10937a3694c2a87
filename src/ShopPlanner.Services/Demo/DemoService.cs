using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Demo;

internal sealed class DemoService(ShopWork work, ShopCommands commands, DemoSeed seed) : IDemoService
{
    public async Task<bool> CanLoadAsync(CancellationToken cancel = default) =>
        await work.ReadAsync(db => DemoSeed.IsEmptyAsync(db, cancel), cancel);

    public Task<Outcome<Done>> LoadAsync(CommandId command, CancellationToken cancel = default) =>
        commands.RunAsync(
            new Making<Done>(command, CommandTexts.Asked("demo"))
            {
                Make = db => LoadAsync(db, cancel),
                Made = _ => "demo",
                Find = (_, _) => Task.FromResult<Done?>(Done.Value),
                What = "demo",
            },
            cancel
        );

    private async Task<Outcome<Done>> LoadAsync(ShopContext db, CancellationToken cancel)
    {
        if (!await DemoSeed.IsEmptyAsync(db, cancel))
            return Outcome.Faulty<Done>(
                new Fault("demo", "", "is for an empty shop, and this one is in use. Start the program with another data folder")
            );
        try
        {
            await seed.AddToEmptyShopAsync(db, cancel);
            return Done.Value;
        }
        catch (ShopStartException problem)
        {
            return Outcome.Faulty<Done>(new Fault("demo", "", problem.Message.TrimEnd('.')));
        }
    }
}
