using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopPlanner.Services.Storage.Migrations
{
    /// <inheritdoc />
    public partial class ToolsAndFirstSetup : Migration
    {
        /// <inheritdoc />
        // A shop in use has what its settings were about, a table saw, and needs no first setup.
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(name: "GuideKerf", table: "Shop", type: "TEXT", nullable: false, defaultValue: "");

            migrationBuilder.AddColumn<string>(name: "HandKerf", table: "Shop", type: "TEXT", nullable: false, defaultValue: "");

            migrationBuilder.AddColumn<bool>(
                name: "HasGuideSaw",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: false
            );

            migrationBuilder.AddColumn<bool>(
                name: "HasHandSaw",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: false
            );

            migrationBuilder.AddColumn<bool>(
                name: "HasMiterSaw",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: false
            );

            migrationBuilder.AddColumn<bool>(
                name: "HasTableSaw",
                table: "Shop",
                type: "INTEGER",
                nullable: false,
                defaultValue: true
            );

            migrationBuilder.AddColumn<string>(
                name: "MiterCrosscut",
                table: "Shop",
                type: "TEXT",
                nullable: false,
                defaultValue: ""
            );

            migrationBuilder.AddColumn<string>(name: "MiterKerf", table: "Shop", type: "TEXT", nullable: false, defaultValue: "");

            migrationBuilder.AddColumn<int>(name: "SetupCards", table: "Shop", type: "INTEGER", nullable: false, defaultValue: 4);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(name: "GuideKerf", table: "Shop");

            migrationBuilder.DropColumn(name: "HandKerf", table: "Shop");

            migrationBuilder.DropColumn(name: "HasGuideSaw", table: "Shop");

            migrationBuilder.DropColumn(name: "HasHandSaw", table: "Shop");

            migrationBuilder.DropColumn(name: "HasMiterSaw", table: "Shop");

            migrationBuilder.DropColumn(name: "HasTableSaw", table: "Shop");

            migrationBuilder.DropColumn(name: "MiterCrosscut", table: "Shop");

            migrationBuilder.DropColumn(name: "MiterKerf", table: "Shop");

            migrationBuilder.DropColumn(name: "SetupCards", table: "Shop");
        }
    }
}
