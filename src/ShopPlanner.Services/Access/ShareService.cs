using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Access;

internal sealed class ShareService(AccessFile file, TimeProvider clock) : IShareService
{
    private const int LongestDays = 90,
        MostShares = 200;

    public Outcome<ShareOffer> Share(Guid id, Guid plan, string name, int days)
    {
        if (days is < 1 or > LongestDays)
            return Outcome.Faulty<ShareOffer>(
                Fault.Of("Days", days.ToString(CultureInfo.InvariantCulture), $"is not from 1 to {LongestDays}")
            );
        var (token, now) = (Secrets.Link(), clock.GetUtcNow());
        var share = new KeptShare(id, plan, name, Secrets.Kept(token), now.AddDays(days).UtcDateTime);
        return file.Change(document =>
        {
            var standing = document.Shares.RemoveAll(one => one.EndsUtc <= now.UtcDateTime);
            if (standing.Any(one => one.Id == id))
                return (document, Refuse("This link was made already. It is shown only once: end it and make another"));
            if (standing.Length >= MostShares)
                return (document, Refuse($"{MostShares} links stand: end some first"));
            return (document with { Shares = standing.Add(share) }, new ShareOffer(share.View(), token));
        });
    }

    public Outcome<Done> End(Guid share) =>
        file.Change<Done>(document =>
            document.Shares.Any(one => one.Id == share)
                ? (document with { Shares = document.Shares.RemoveAll(one => one.Id == share) }, Done.Value)
                : (document, Outcome.Missing<Done>("link"))
        );

    public SharedPlan? Find(string token)
    {
        var (secret, now) = (Secrets.Kept(token), clock.GetUtcNow().UtcDateTime);
        return file.Now.Shares.FirstOrDefault(one => one.Secret == secret && one.EndsUtc > now) is { } share
            ? share.View()
            : null;
    }

    private static Outcome<ShareOffer> Refuse(string why) => Outcome.Faulty<ShareOffer>(new Fault("", "", why));
}
