using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace ShopPlanner.Services.Storage;

/// <summary>Carries all rows of a shop from one database to another, whichever kinds they are: ids, versions and times stay as
/// they are.</summary>
internal static class RowCopy
{
    /// <summary>Puts the rows of one context in the place of another's. Both belong to a transaction of the caller's, or the
    /// target is a file that nobody else has.</summary>
    public static Task AllAsync(ShopContext from, ShopContext to, CancellationToken cancel) =>
        SomeAsync(from, to, to.Model.GetEntityTypes().Select(type => type.ClrType).ToHashSet(), cancel);

    /// <summary>Does that with some kinds of rows alone.</summary>
    public static async Task SomeAsync(ShopContext from, ShopContext to, IReadOnlySet<Type> kinds, CancellationToken cancel)
    {
        var ordered = Ordered(to).Select(type => type.ClrType).Where(kinds.Contains).ToList();
        foreach (var row in Enumerable.Reverse(ordered))
            await Of(row).ClearAsync(to, cancel);
        foreach (var row in ordered)
            await Of(row).ReadAsync(from, to, cancel);
        await to.SaveChangesAsync(cancel);
        to.ChangeTracker.Clear();
    }

    // What others refer to comes first.
    private static List<IEntityType> Ordered(ShopContext db)
    {
        var left = db.Model.GetEntityTypes().OrderBy(type => type.Name, StringComparer.Ordinal).ToList();
        var ordered = new List<IEntityType>();
        while (left.Count > 0)
        {
            var next = left.First(type => type.GetForeignKeys().All(key => IsThere(key, type, ordered)));
            ordered.Add(next);
            left.Remove(next);
        }

        return ordered;
    }

    private static bool IsThere(IForeignKey key, IEntityType type, List<IEntityType> ordered) =>
        key.PrincipalEntityType == type || ordered.Contains(key.PrincipalEntityType);

    private static ITable Of(Type row) => (ITable)Activator.CreateInstance(typeof(Table<>).MakeGenericType(row))!;

    private interface ITable
    {
        Task ClearAsync(ShopContext db, CancellationToken cancel);

        Task ReadAsync(ShopContext from, ShopContext to, CancellationToken cancel);
    }

    private sealed class Table<T> : ITable
        where T : class
    {
        public Task ClearAsync(ShopContext db, CancellationToken cancel) =>
            db.Set<T>().IgnoreQueryFilters().ExecuteDeleteAsync(cancel);

        public async Task ReadAsync(ShopContext from, ShopContext to, CancellationToken cancel) =>
            to.Set<T>().AddRange(await from.Set<T>().IgnoreQueryFilters().AsNoTracking().ToListAsync(cancel));
    }
}
