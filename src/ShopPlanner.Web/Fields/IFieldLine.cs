namespace ShopPlanner.Web.Fields;

/// <summary>Handed down to the fields of a line of a table: what was typed in them is stored together.</summary>
public interface IFieldLine
{
    /// <summary>Stores the texts that wait.</summary>
    Task StoreAsync();
}
