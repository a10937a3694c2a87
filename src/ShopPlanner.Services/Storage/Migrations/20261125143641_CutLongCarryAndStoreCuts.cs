using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopPlanner.Services.Storage.Migrations
{
    /// <inheritdoc />
    public partial class CutLongCarryAndStoreCuts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<long>(
                name: "CutTolerance",
                table: "Stores",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L
            );

            migrationBuilder.AddColumn<int>(
                name: "FirstCuts",
                table: "Stores",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0
            );

            migrationBuilder.AddColumn<string>(
                name: "CarryLongest",
                table: "Shop",
                type: "TEXT",
                nullable: false,
                defaultValue: ""
            );

            migrationBuilder.AddColumn<string>(
                name: "CarryWidest",
                table: "Shop",
                type: "TEXT",
                nullable: false,
                defaultValue: ""
            );

            migrationBuilder.AddColumn<string>(
                name: "LongestCrosscut",
                table: "Shop",
                type: "TEXT",
                nullable: false,
                defaultValue: ""
            );

            migrationBuilder.AddColumn<string>(name: "WidestRip", table: "Shop", type: "TEXT", nullable: false, defaultValue: "");

            migrationBuilder.AddColumn<string>(name: "LongBy", table: "Parts", type: "TEXT", nullable: false, defaultValue: "");

            migrationBuilder.AddColumn<string>(name: "Practice", table: "Parts", type: "TEXT", nullable: false, defaultValue: "");

            migrationBuilder.AddColumn<string>(name: "WideBy", table: "Parts", type: "TEXT", nullable: false, defaultValue: "");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(name: "CutTolerance", table: "Stores");

            migrationBuilder.DropColumn(name: "FirstCuts", table: "Stores");

            migrationBuilder.DropColumn(name: "CarryLongest", table: "Shop");

            migrationBuilder.DropColumn(name: "CarryWidest", table: "Shop");

            migrationBuilder.DropColumn(name: "LongestCrosscut", table: "Shop");

            migrationBuilder.DropColumn(name: "WidestRip", table: "Shop");

            migrationBuilder.DropColumn(name: "LongBy", table: "Parts");

            migrationBuilder.DropColumn(name: "Practice", table: "Parts");

            migrationBuilder.DropColumn(name: "WideBy", table: "Parts");
        }
    }
}
