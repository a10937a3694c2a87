namespace ShopPlanner.Core.Making.Model;

/// <summary>What a finish will meet besides dry hands.</summary>
public enum FinishUse
{
    /// <summary>Rain and sun.</summary>
    Outdoors,

    /// <summary>Children, who put things in their mouths.</summary>
    Children,

    /// <summary>Food.</summary>
    Food,
}
